// The workshop's light, made of a few shapes instead of an image: walls and ceiling, two rows of lamps overhead, a tall
// window behind the mechanic's left shoulder. Radiance in units of a sheet of white paper under the key light.

const vec3 kCeiling = vec3(0.86, 0.85, 0.83);
const vec3 kWalls = vec3(0.56, 0.55, 0.53);
const vec3 kDado = vec3(0.28, 0.28, 0.29);   // benches, cabinets, what stands along the walls
const vec3 kGround = vec3(0.40, 0.375, 0.34);
const vec3 kSkyPole = vec3(0.12, 0.86, -0.495);  // where most of the soft light comes from
const vec3 kSkyLight = vec3(0.62, 0.635, 0.66);
const vec3 kBounce = vec3(0.17, 0.155, 0.135);
const vec3 kKeyLight = vec3(1.18, 1.12, 1.02);
const vec3 kLampLight = vec3(1.9, 2.0, 2.1);

// a rectangle of light, `to` being its middle; the rougher the surface, the wider and thinner its picture
float panel(vec3 d, vec3 to, vec3 across, vec2 half_size, float blur) {
  float facing = max(dot(d, to), 0.04);  // behind it, the quotients below are large and the share is nothing
  vec2 p = abs(vec2(dot(d, across), dot(d, cross(to, across)))) / facing;
  vec2 share = clamp((half_size + blur - p) / (2.0 * blur), 0.0, 1.0);
  share = share * share * (3.0 - 2.0 * share);
  vec2 thin = min(vec2(1.0), half_size / blur);
  return share.x * share.y * thin.x * thin.y;
}

// the room without its lamps
vec3 room(vec3 d, float roughness) {
  float soft = 0.05 + 0.9 * roughness;
  vec3 steps = smoothstep(vec3(-soft), vec3(soft), vec3(d.y - 0.05, d.y - 0.55, -d.y - 0.38));
  return mix(mix(mix(kDado, kWalls, steps.x), kCeiling, steps.y), kGround, steps.z);
}

// what a surface of this roughness gathers round a direction
vec3 studio(vec3 d, float roughness) {
  vec3 light = room(d, roughness);
  float blur = 0.02 + 1.1 * roughness * roughness + 0.10 * roughness;
  light += vec3(3.6, 3.5, 3.3) * panel(d, vec3(0.42, 0.80, -0.428), vec3(0.0, 0.472, 0.8816), vec2(0.62, 0.13), blur);
  light += vec3(3.0, 2.95, 2.85) * panel(d, vec3(-0.38, 0.88, -0.285), vec3(0.0, 0.308, 0.951), vec2(0.7, 0.10), blur);
  light += vec3(2.1, 2.25, 2.5) * panel(d, vec3(0.66, 0.24, -0.712), vec3(0.733, 0.0, 0.680), vec2(0.24, 0.42), blur);
  light += vec3(0.75, 0.73, 0.70) * panel(d, vec3(-0.80, 0.22, -0.558), vec3(0.572, 0.0, -0.820), vec2(0.30, 0.55), blur);
  return light;
}

// soft light on a matt surface where no direction of the sky is sampled
vec3 sky_on(vec3 n) {
  return kSkyLight * (0.5 + 0.5 * dot(n, kSkyPole));
}

vec3 bounce_on(vec3 n) {
  return kBounce * (0.5 - 0.5 * n.y);
}
