#include "sim/scene/tessellate.h"

#include <GL/glu.h>

#include <array>
#include <deque>

namespace proofstand::scene {
namespace {

struct Work {
  Flat flat;
  std::deque<std::array<GLdouble, 3>> coords;  // the tessellator keeps pointers to them
};

void* as_data(std::size_t index) { return reinterpret_cast<void*>(index); }

void on_vertex(void* vertex, void* work) {
  const auto index = static_cast<std::uint32_t>(reinterpret_cast<std::size_t>(vertex));
  static_cast<Work*>(work)->flat.indices.push_back(index);
}

// that it is given at all makes the tessellator emit plain triangles
void on_edge(GLboolean, void*) {}

void on_combine(GLdouble* at, void**, GLfloat*, void** out, void* data) {
  Work& work = *static_cast<Work*>(data);
  *out = as_data(work.flat.points.size());
  work.flat.points.emplace_back(at[0], at[1]);
}

using Callback = void (*)();

}  // namespace

Flat tessellate(const Outline& outline) {
  Work work;
  for (const Loop& loop : outline) work.flat.points.insert(work.flat.points.end(), loop.begin(), loop.end());
  GLUtesselator* tess = gluNewTess();
  if (tess == nullptr) return work.flat;
  gluTessCallback(tess, GLU_TESS_VERTEX_DATA, reinterpret_cast<Callback>(on_vertex));
  gluTessCallback(tess, GLU_TESS_EDGE_FLAG_DATA, reinterpret_cast<Callback>(on_edge));
  gluTessCallback(tess, GLU_TESS_COMBINE_DATA, reinterpret_cast<Callback>(on_combine));
  gluTessProperty(tess, GLU_TESS_WINDING_RULE, GLU_TESS_WINDING_POSITIVE);
  gluTessNormal(tess, 0.0, 0.0, 1.0);
  gluTessBeginPolygon(tess, &work);
  std::size_t index = 0;
  for (const Loop& loop : outline) {
    gluTessBeginContour(tess);
    for (const glm::dvec2& p : loop) {
      work.coords.push_back({p.x, p.y, 0.0});
      gluTessVertex(tess, work.coords.back().data(), as_data(index++));
    }
    gluTessEndContour(tess);
  }
  gluTessEndPolygon(tess);
  gluDeleteTess(tess);
  return work.flat;
}

}  // namespace proofstand::scene
