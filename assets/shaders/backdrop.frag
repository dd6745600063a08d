// What is seen past everything: a bright room out of focus, its floor melting into its wall.
in vec2 spot;
out vec4 result;

void main() {
  vec3 d = normalize(backdrop_ray_z.xyz + spot.x * backdrop_ray_x.xyz + spot.y * backdrop_ray_y.xyz);
  vec3 wall = mix(vec3(0.80, 0.785, 0.755), vec3(0.90, 0.895, 0.88), smoothstep(-0.05, 0.7, d.y));
  vec3 ground = mix(vec3(0.70, 0.68, 0.645), vec3(0.55, 0.53, 0.50), smoothstep(0.1, 0.9, -d.y));
  vec3 light = mix(ground, wall, smoothstep(-0.30, 0.12, d.y));
  // the window's side is brighter
  light *= 1.0 + 0.07 * d.x;
#ifdef STILL
  result = vec4(light, 1.0);
#else
  result = developed(light, gl_FragCoord.xy);
#endif
}
