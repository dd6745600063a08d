// What is the same for everything that one picture holds. The block's order is that of FrameBlock in the program.
layout(std140) uniform Frame {
  mat4 world_to_clip;
  mat4 world_to_key;   // of the key light's shadow map, 0..1
  mat4 world_to_sky;   // of one direction of the sky, 0..1
  vec4 eye;            // world; w: noise that differs from sample to sample, 0..1
  vec4 key_towards;    // to the key light; w: side of a shadow texel [m]
  vec4 sky_towards;    // to a sample of the sky; w: side of its shadow texel [m]
  vec4 lamp_at;        // hand lamp; w: strength, 0 is off
  vec4 lamp_towards;   // where it shines
  vec4 backdrop_ray_x; // across half the picture, for the backdrop's rays
  vec4 backdrop_ray_y; // up half of it
  vec4 backdrop_ray_z; // to its middle
};
