// Every surface of the workshop, in editions, because software renderers compute both sides of every branch:
// MATT (nothing is seen in it), GLOSS, TURNED (cut round its axis), CLOTH, SKIN; FILM: with a film map; LAMP: the hand
// lamp is on. STILL: one sample in linear light, of a soft key light and a point of the sky; else finished bytes.
// TAPS: looks into the shadow map, 1 or 4.
in vec3 at;
in vec3 facing;
in vec3 along;
in vec3 own;
in vec2 film_at;

uniform vec3 color;
uniform vec3 surface;  // roughness, metal, glow
#ifdef FILM
uniform sampler2D film;
#endif
uniform sampler2DShadow key_map;
#ifdef STILL
uniform sampler2DShadow sky_map;
#endif

out vec4 result;

const float kPi = 3.14159265;

float scatter(vec2 p) {
  return fract(52.9829189 * fract(dot(p, vec2(0.06711056, 0.00583715))));
}

float lit_through(sampler2DShadow map, mat4 world_to_map, vec3 n, vec3 towards, float texel_m) {
  // along the surface's own normal, the more the flatter the light comes in, so that nothing shades itself
  float slant = 1.0 - clamp(dot(n, towards), 0.0, 1.0);
  vec4 p = world_to_map * vec4(at + n * texel_m * (0.7 + 1.3 * slant), 1.0);
  vec2 rim = abs(p.xy - 0.5) * 2.0;
  float outside = smoothstep(0.88, 0.98, max(rim.x, rim.y));
  p.z = min(p.z, 0.9999);
#ifdef STILL
  // each texel looks a little beside, so that few directions of light leave grain and not stripes
  vec2 beside = vec2(scatter(gl_FragCoord.xy + eye.w * 61.0), scatter(gl_FragCoord.yx + eye.w * 97.0 + 31.0)) - 0.5;
  float lit = texture(map, p.xyz + vec3(beside * 3.0 / vec2(textureSize(map, 0)), 0.0));
#elif TAPS == 1
  float lit = texture(map, p.xyz);
#else
  // four looks that each mean four texels: as soft as nine
  vec2 beside = 0.9 / vec2(textureSize(map, 0));
  float lit = 0.25 * (texture(map, p.xyz + vec3(-beside.x, -beside.y * 0.35, 0.0)) +
                      texture(map, p.xyz + vec3(beside.x * 0.35, -beside.y, 0.0)) +
                      texture(map, p.xyz + vec3(beside.x, beside.y * 0.35, 0.0)) +
                      texture(map, p.xyz + vec3(-beside.x * 0.35, beside.y, 0.0)));
#endif
  return mix(lit, 1.0, outside);
}

// GGX with Smith's shading in its joint approximation. source: Walter and others 2007; Heitz 2014; Hammon 2017
float gloss(float nh, float nl, float nv, float a) {
  float a2 = a * a;
  float d = nh * nh * (a2 - 1.0) + 1.0;
  return a2 / (kPi * d * d) * 0.5 / mix(2.0 * nl * nv, nl + nv, a);
}

// the same for a surface cut in one direction: wide across the cuts, narrow along them. source: Burley 2012
float cut_gloss(vec3 h, vec3 n, vec3 t, vec3 b, float nl, float nv, float along_a, float across_a) {
  vec3 s = vec3(dot(h, t) / along_a, dot(h, b) / across_a, dot(h, n));
  float d = dot(s, s);
  return 1.0 / (kPi * along_a * across_a * d * d) * 0.5 / mix(2.0 * nl * nv, nl + nv, 0.5 * (along_a + across_a));
}

// share of light that a rough surface gives back over all directions. source: Karis 2014, fit for small devices
vec3 mirrored_share(vec3 f0, float roughness, float nv) {
  vec4 r = roughness * vec4(-1.0, -0.0275, -0.572, 0.022) + vec4(1.0, 0.0425, 1.04, -0.04);
  float a = min(r.x * r.x, exp2(-9.28 * nv)) * r.x + r.y;
  vec2 share = vec2(-1.04, 1.04) * a + r.zw;
  return f0 * share.x + share.y;
}

float hash(float x) {
  return fract(sin(x * 127.1) * 43758.5453);
}

float ripple(float x) {
  float cell = floor(x), part = fract(x);
  part = part * part * (3.0 - 2.0 * part);
  return mix(hash(cell), hash(cell + 1.0), part) - 0.5;
}

void main() {
  vec3 true_n = normalize(facing);
  vec3 n = true_n;
  vec3 v = normalize(eye.xyz - at);
  vec3 base = color;
  float roughness = surface.x, metal = surface.y;

#ifdef FILM
  vec4 f = texture(film, film_at);
  float dull = f.x, wet = f.y, dark = f.z;
  // grease dulls a mirror and tints it; alcohol lies on it as a dark gloss; dust is grey and matt
  roughness = mix(roughness, 0.62, 0.75 * dull);
  base *= mix(vec3(1.0), vec3(0.70, 0.655, 0.56), dull);
  roughness = mix(roughness, 0.07, wet * (1.0 - 0.6 * dull));
  base *= 1.0 - 0.42 * wet;
  base = mix(base, vec3(0.055, 0.053, 0.05), 0.85 * dark);
  roughness = mix(roughness, 0.85, dark);
  metal *= 1.0 - 0.8 * dark;
  base = mix(base, base * 0.8 + 0.12, f.w * 0.6);
  float ridges = dull * (1.0 - wet);
#else
  const float ridges = 0.0;
#endif

#ifdef TURNED
  float reach = length(along);
  float spread = smoothstep(0.0005, 0.002, reach) * (1.0 - 0.75 * ridges);
  vec3 t = reach > 1e-5 ? along / reach : vec3(1.0, 0.0, 0.0);
  t = normalize(t - n * dot(n, t));
  vec3 b = cross(n, t);
  // single cuts show near by and melt into the spread farther off
  float cut = length(own.xy) * 5200.0 + own.z * 4100.0;
  float near = clamp(1.2 - fwidth(cut), 0.0, 1.0);
  n = normalize(n + b * ripple(cut) * 0.16 * near * spread);
  base *= 1.0 + ripple(cut * 0.21 + 7.0) * 0.09 * clamp(1.2 - 0.21 * fwidth(cut), 0.0, 1.0);
#endif
#ifdef CLOTH
  vec2 weave = (abs(n.z) > 0.5 ? own.xy : (abs(n.y) > 0.5 ? own.xz : own.yz)) * 5600.0;
  float near = clamp(1.1 - 0.35 * (fwidth(weave.x) + fwidth(weave.y)), 0.0, 1.0);
  base *= 1.0 + 0.22 * near * sin(weave.x) * sin(weave.y);
#endif

  // where a curve is smaller than a texel, its many normals are one rougher surface. source: Kaplanyan and others 2016
#ifndef MATT
  vec3 bend = fwidth(n);
  roughness = sqrt(clamp(roughness * roughness + min(0.18, 0.3 * dot(bend, bend)), 0.0016, 1.0));
#endif

  float nv = max(dot(n, v), 1e-3);
  float a = roughness * roughness;
  vec3 f0 = max(mix(vec3(0.04), base, metal), vec3(0.04));
  vec3 matt = base * (1.0 - metal);

  // the key light
  vec3 l = key_towards.xyz;
  float nl = dot(n, l);
  float lit = lit_through(key_map, world_to_key, true_n, l, key_towards.w);
#ifdef SKIN
  // light wanders under skin: red farthest
  const vec3 wrap = vec3(0.34, 0.16, 0.11);
  vec3 light = matt * kKeyLight * max(vec3(0.0), (vec3(nl) + wrap) / (1.0 + wrap)) * mix(0.25 * wrap, vec3(1.0), lit);
#elif defined(CLOTH)
  vec3 light = matt * kKeyLight * max(0.0, (nl + 0.22) / 1.22) * lit;
#else
  vec3 light = matt * kKeyLight * max(nl, 0.0) * lit;
#endif
#if !defined(MATT) && !defined(CLOTH)
  {
    float front = max(nl, 1e-3);
    vec3 h = normalize(l + v);
    float nh = clamp(dot(n, h), 0.0, 1.0);
    float wide = max(a, 0.03);  // the lamp has a size of its own
#ifdef TURNED
    float g = cut_gloss(h, n, t, b, front, nv, max(wide * 0.7, 0.05), mix(wide, min(1.0, wide * 2.6 + 0.16), spread));
#else
    float g = gloss(nh, front, nv, wide);
#endif
    float edge = 1.0 - clamp(dot(l, h), 0.0, 1.0);
    float e2 = edge * edge;
    light += kKeyLight * max(nl, 0.0) * lit * min(g, 14.0) * (f0 + (1.0 - f0) * e2 * e2 * edge);
  }
#endif

  // the soft light of the room
#ifdef STILL
  float sky_nl = max(dot(n, sky_towards.xyz), 0.0);
  float open = lit_through(sky_map, world_to_sky, true_n, sky_towards.xyz, sky_towards.w);
  vec3 soft = kSkyLight * 2.0 * sky_nl * open;
  float shown = mix(0.45, 1.0, sky_nl > 0.0 ? open : 1.0);
#else
  vec3 soft = sky_on(n) * 0.86;
  float shown = 0.88;
#endif
  light += matt * (soft + bounce_on(n));
#if defined(CLOTH) || defined(SKIN)
  float rim = 1.0 - nv;  // fibres and fine hair catch light at the edge
  light += 0.08 * rim * rim * rim * (matt + 0.15);
#endif

  // what the surface mirrors
#if defined(MATT) || defined(CLOTH)
  vec3 mirrored = (sky_on(n) + bounce_on(n)) * 0.9;  // a blur of everything; which lamp, nobody sees
#elif defined(TURNED)
  float width = spread * (0.22 + 0.5 * a);
#ifdef STILL
  vec3 mirrored = studio(reflect(-v, normalize(n + b * width * (2.0 * eye.w - 1.0))), roughness);
#else
  vec3 mirrored = (studio(reflect(-v, normalize(n - b * width * 0.66)), roughness) + studio(reflect(-v, n), roughness) +
                   studio(reflect(-v, normalize(n + b * width * 0.66)), roughness)) / 3.0;
#endif
#else
  vec3 mirrored = studio(reflect(-v, n), roughness);
#endif
#if defined(MATT) || defined(CLOTH)
  light += mirrored * shown * 0.045;
#else
  light += mirrored * shown * mirrored_share(f0, roughness, nv);
#endif

#ifdef LAMP
  // the lamp in the hand rakes over films: it shows the ridges of a print that room light hides
  {
    vec3 to = lamp_at.xyz - at;
    float away = length(to);
    to /= away;
    float cone = smoothstep(0.80, 0.95, dot(-to, lamp_towards.xyz));
    vec3 rn = n;
#ifdef FILM
    vec2 p = own.xy * 1900.0;
    float wander = sin(p.x * 0.11 + 1.3 * sin(p.y * 0.07));
    vec3 slope = dFdx(at) * dFdx(ridges) + dFdy(at) * dFdy(ridges);
    rn = normalize(n + 0.22 * ridges * cos(p.x + p.y * 0.6 + 5.0 * wander) * normalize(cross(n, vec3(0.3, 1.0, 0.2))) -
                   slope * 40000.0);
#endif
    float lamp_nl = max(dot(rn, to), 0.0);
    float strength = lamp_at.w * cone * min(3.0, 0.045 / (away * away + 0.008));
    vec3 h = normalize(to + v);
    float g = min(gloss(clamp(dot(rn, h), 0.0, 1.0), max(lamp_nl, 1e-3), nv, max(a, 0.02)), 16.0);
    light += kLampLight * strength * lamp_nl * (matt + f0 * g + vec3(0.35, 0.33, 0.29) * ridges);
  }
#endif

  light += base * surface.z * 2.5;

#ifdef STILL
  result = vec4(min(light, vec3(5.0)), 1.0);
#else
  result = developed(light, gl_FragCoord.xy);
#endif
}
