layout(location = 0) in vec3 position;
uniform mat4 part_to_map;

void main() {
  gl_Position = part_to_map * vec4(position, 1.0);
}
