#include "sim/picture/mesh_shelf.h"

#include <cstddef>

namespace proofstand::picture {
namespace {

const void* offset_of(std::size_t bytes) {
  return reinterpret_cast<const void*>(bytes);  // NOLINT: OpenGL takes offsets as pointers
}

void describe(GLuint place, GLint numbers, std::size_t offset) {
  glEnableVertexAttribArray(place);
  glVertexAttribPointer(place, numbers, GL_FLOAT, GL_FALSE, static_cast<GLsizei>(sizeof(scene::Vertex)),
                        offset_of(offset));
}

}  // namespace

MeshShelf::~MeshShelf() { drop(); }

void MeshShelf::drop() {
  if (list_ == 0) return;
  glDeleteVertexArrays(1, &list_);
  glDeleteBuffers(1, &vertices_);
  glDeleteBuffers(1, &indices_);
  list_ = 0;
}

void MeshShelf::keep(const std::vector<scene::Mesh>& meshes) {
  drop();
  stretches_.clear();
  std::vector<scene::Vertex> vertices;
  std::vector<std::uint32_t> indices;
  for (const scene::Mesh& mesh : meshes) {
    stretches_.push_back({static_cast<GLsizei>(mesh.indices.size()), indices.size(),
                          static_cast<GLint>(vertices.size()), scene::bounding_ball(mesh)});
    vertices.insert(vertices.end(), mesh.vertices.begin(), mesh.vertices.end());
    indices.insert(indices.end(), mesh.indices.begin(), mesh.indices.end());
  }
  glGenVertexArrays(1, &list_);
  glBindVertexArray(list_);
  glGenBuffers(1, &vertices_);
  glBindBuffer(GL_ARRAY_BUFFER, vertices_);
  glBufferData(GL_ARRAY_BUFFER, static_cast<GLsizeiptr>(vertices.size() * sizeof(scene::Vertex)), vertices.data(),
               GL_STATIC_DRAW);
  glGenBuffers(1, &indices_);
  glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, indices_);
  glBufferData(GL_ELEMENT_ARRAY_BUFFER, static_cast<GLsizeiptr>(indices.size() * sizeof(std::uint32_t)), indices.data(),
               GL_STATIC_DRAW);
  describe(0, 3, offsetof(scene::Vertex, position));
  describe(1, 3, offsetof(scene::Vertex, normal));
  describe(2, 2, offsetof(scene::Vertex, coords));
}

void MeshShelf::bind() const { glBindVertexArray(list_); }

void MeshShelf::draw(scene::MeshId mesh) const {
  if (!holds(mesh)) return;
  const Stretch& stretch = stretches_[mesh];
  glDrawElementsBaseVertex(GL_TRIANGLES, stretch.count, GL_UNSIGNED_INT,
                           offset_of(stretch.first * sizeof(std::uint32_t)), stretch.base);
}

scene::Ball MeshShelf::ball(scene::MeshId mesh) const { return holds(mesh) ? stretches_[mesh].ball : scene::Ball{}; }

}  // namespace proofstand::picture
