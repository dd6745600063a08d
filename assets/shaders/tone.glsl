// From light to the bytes of a picture.

// a filmic curve: a toe that keeps blacks black, a shoulder that keeps bright metal from burning out
// source: K. Narkowicz, fit of a film-like curve by a ratio of two quadratics, 2015 (coefficients from memory)
vec3 film_curve(vec3 light) {
  vec3 x = light * 0.56;
  return clamp(x * (2.51 * x + 0.03) / (x * (2.43 * x + 0.59) + 0.14), 0.0, 1.0);
}

// sRGB's curve (IEC 61966-2-1) by square roots alone: within 0.004 of it, and much cheaper than a power
vec3 srgb_from(vec3 linear) {
  vec3 a = sqrt(linear);
  vec3 b = sqrt(a);
  vec3 c = sqrt(b);
  return clamp(0.585122381 * a + 0.783140355 * b - 0.368262736 * c, 0.0, 1.0);
}

// half a step of grain, so that wide soft shades show no steps
float grain_at(vec2 texel) {
  return fract(52.9829189 * fract(dot(texel, vec2(0.06711056, 0.00583715)))) - 0.5;
}

vec4 developed(vec3 light, vec2 texel) {
  return vec4(srgb_from(film_curve(light)) + grain_at(texel) / 255.0, 1.0);
}
