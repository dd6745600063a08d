// Engraved lines and figures on flat and round faces, filled with black: meshes that lie a hair above the metal.
#pragma once

#include <string_view>

#include "sim/scene/glyphs.h"
#include "sim/scene/mesh.h"

namespace proofstand::scene {

/// How far a mark stands above its face [m], so that it never drowns in it.
inline constexpr float kMarkLift_m = 0.00004F;

/// Rectangle in the plane z = 0 looking to +z: from corner to corner.
void add_bar(Mesh& mesh, const glm::vec2& from, const glm::vec2& to, float z_m = kMarkLift_m);
/// Line along the axis of a cylinder about z, width_m across, at an angle.
void add_line_along(Mesh& mesh, float radius_m, float angle_rad, float from_z_m, float to_z_m, float width_m);
/// Line round it, at a height, between two angles.
void add_line_round(Mesh& mesh, float radius_m, float z_m, float from_rad, float to_rad, float width_m);
/// The same lines on a cone: the radius changes by slope_1 a metre along z, radius_m holds at z = 0.
struct Cone {
  float radius_m = 0.0F;
  float slope_1 = 0.0F;
  [[nodiscard]] float at(float z_m) const { return radius_m + slope_1 * z_m; }
};
void add_line_along(Mesh& mesh, const Cone& cone, float angle_rad, float from_z_m, float to_z_m, float width_m);
/// Words bent onto a cylinder or cone: they run along +z, their middle at (angle, z); `towards` says on which side of
/// the words lies growing angle: +1 their tops, -1 their feet.
void add_words_along(Mesh& mesh, const Typeface& face, std::string_view words, float cap_m, const Cone& cone,
                     float angle_rad, float z_m, Align align = Align::Middle, float tops_towards_1 = -1.0F);
/// Words bent round a cylinder, read with +z upwards.
void add_words_round(Mesh& mesh, const Typeface& face, std::string_view words, float cap_m, float radius_m,
                     float angle_rad, float z_m);

}  // namespace proofstand::scene
