layout(location = 0) in vec3 position;
layout(location = 1) in vec3 normal;

uniform mat4 part_to_world;
uniform mat4 world_to_window;

out vec3 at;
out vec3 facing;

void main() {
  vec4 world = part_to_world * vec4(position, 1.0);
  at = world.xyz;
  facing = mat3(part_to_world) * normal;
  gl_Position = world_to_window * world;
}
