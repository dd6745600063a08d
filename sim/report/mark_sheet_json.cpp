#include <exception>
#include <nlohmann/json.hpp>

#include "sim/base/assert.h"
#include "sim/base/math.h"
#include "sim/base/quantity.h"
#include "sim/report/mark_sheet_text.h"

namespace proofstand::report {
namespace {

using Json = nlohmann::ordered_json;

constexpr int kSheetVersion = 1;

double points(std::int64_t milli) { return static_cast<double>(milli) / 1000.0; }
double everyday(double value_si, base::Dimension dimension) { return base::in_everyday_unit(value_si, dimension); }
double mm(double length_m) { return everyday(length_m, base::Dimension::Length); }

Json totals_json(const rules::Totals& totals) {
  return {{"earned", points(totals.earned_milli)},
          {"judged", points(totals.judged_milli)},
          {"covered", points(totals.covered_milli)},
          {"declared", points(totals.declared_milli)}};
}

Json finding_json(const FindingLine& line) {
  Json evidence = Json::array();
  for (const EvidenceLine& proof : line.evidence) {
    evidence.push_back({{"tick", proof.tick},
                        {"time_s", base::seconds(proof.tick)},
                        {"event", proof.position},
                        {"says", proof.words}});
  }
  return {{"rule", line.rule},
          {"competence", line.competence},
          {"severity", line.severity},
          {"verdict", rules::verdict_word(line.verdict)},
          {"points", points(line.points_milli)},
          {"earned", points(line.earned_milli)},
          {"says", line.what},
          {"why", line.why},
          {"aside", line.aside},
          {"evidence", evidence}};
}

Json joint_json(const JointLine& joint) {
  Json out = {{"clamp_n", joint.clamp_n},
              {"clamp_spread", joint.spread_1},
              {"capacity_nm", joint.capacity_nm},
              {"demand_nm", joint.demand_nm},
              {"slips", joint.slips},
              {"clearance_mm", mm(joint.clearance_m)},
              {"slip_angle_deg", base::degrees(joint.slip_angle_rad)},
              {"knock_j", joint.knock_j},
              {"bolt_shear_n", joint.bolt_shear_n},
              {"friction", joint.friction_1},
              {"stop_m", joint.stop_m},
              {"runout_mm", mm(joint.runout_m)}};
  out["thickness_mm"] = joint.thickness_m ? Json(mm(*joint.thickness_m)) : Json();
  out["above_stamp_mm"] = joint.above_stamp_m ? Json(mm(*joint.above_stamp_m)) : Json();
  return out;
}

Json computed_json(const MarkSheet& sheet) {
  Json bolts = Json::array();
  for (const BoltLine& bolt : sheet.bolts) {
    Json row = {{"bolt", bolt.bolt + 1}, {"present", bolt.present}};
    if (bolt.present) {
      row["last_torque_nm"] = bolt.last_torque_nm;
      row["preload_n"] = bolt.preload_n;
      row["clamp_n"] = bolt.clamp_n;
      row["locker"] = bolt.locker;
    }
    row["remarks"] = bolt.remarks;
    bolts.push_back(std::move(row));
  }
  Json faces = Json::array();
  for (const FaceLine& face : sheet.faces) {
    faces.push_back({{"face", face.face},
                     {"film_worst_ug_cm2", everyday(face.film_worst_kg_m2, base::Dimension::FilmLoad)},
                     {"coverage", face.coverage_1},
                     {"friction_factor", face.friction_factor_1}});
  }
  Json rounds = Json::array();
  for (const TighteningRound& round : sheet.rounds) {
    Json row = Json::array();
    for (const std::size_t bolt : round) row.push_back(bolt + 1);
    rounds.push_back(std::move(row));
  }
  Json out = {{"bolts", bolts}, {"faces", faces}, {"tightening_rounds", rounds}};
  out["joint"] = sheet.joint ? joint_json(*sheet.joint) : Json();
  if (sheet.preload_hi_n > 0.0) {
    out["sheet_preload_lo_n"] = sheet.preload_lo_n;
    out["sheet_preload_hi_n"] = sheet.preload_hi_n;
  }
  return out;
}

Json sheet_json(const MarkSheet& sheet) {
  Json findings = Json::array();
  for (const std::vector<FindingLine>* list : {&sheet.lost, &sheet.met, &sheet.aside}) {
    for (const FindingLine& line : *list) findings.push_back(finding_json(line));
  }
  Json competences = Json::array();
  for (const CompetenceLine& line : sheet.competences) {
    Json row = {{"name", line.name}};
    row.update(totals_json(line.totals));
    competences.push_back(std::move(row));
  }
  Json card = Json::array();
  for (const CardLine& line : sheet.card) {
    card.push_back({{"entry", line.entry},
                    {"written", line.written},
                    {"truth", line.truth},
                    {"needed", line.needed},
                    {"agrees", line.agrees}});
  }
  Json totals = totals_json(sheet.totals);
  totals["pass_mark_share"] = points(sheet.pass_mark_milli);
  return {{"proofstand", "mark-sheet"},
          {"format", kSheetVersion},
          {"scenario", {{"id", sheet.scenario}, {"title", sheet.title}, {"seed", sheet.seed}, {"drawn", sheet.drawn}}},
          {"who", sheet.who},
          {"way", sheet.way},
          {"time_s", base::seconds(sheet.time)},
          {"verdict", rules::overall_word(sheet.overall)},
          {"reason", sheet.reason},
          {"points", totals},
          {"competences", competences},
          {"findings", findings},
          {"computed", computed_json(sheet)},
          {"card", card},
          {"cautions", sheet.cautions},
          {"notes", sheet.notes}};
}

}  // namespace

std::string mark_sheet_json(const MarkSheet& sheet) {
  try {
    return sheet_json(sheet).dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
  } catch (const std::exception& trouble) {
    // texts are mended above, so this is memory or a bug of ours; an empty object would be taken for a sheet
    base::stop_on_bug(trouble.what(), __FILE__, __LINE__);
  }
}

}  // namespace proofstand::report
