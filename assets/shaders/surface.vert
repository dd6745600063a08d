layout(location = 0) in vec3 position;
layout(location = 1) in vec3 normal;
layout(location = 2) in vec2 coords;

uniform mat4 part_to_world;

out vec3 at;        // world
out vec3 facing;    // world
out vec3 along;     // world: the way a turned part was cut, round its z axis
out vec3 own;       // the part's own frame
out vec2 film_at;

void main() {
  vec4 world = part_to_world * vec4(position, 1.0);
  mat3 turn = mat3(part_to_world);
  at = world.xyz;
  facing = turn * normal;
  along = turn * vec3(-position.y, position.x, 0.0);
  own = position;
  film_at = coords;
  gl_Position = world_to_clip * world;
}
