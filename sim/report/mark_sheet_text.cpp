#include "sim/report/mark_sheet_text.h"

#include "sim/base/math.h"
#include "sim/base/number_text.h"
#include "sim/base/quantity.h"
#include "sim/base/words.h"
#include "sim/report/catalogue.h"
#include "sim/report/sheet_parts.h"

namespace proofstand::report {
namespace {

using base::Dimension;
using base::quantity_words;

constexpr std::size_t kColumns = 100;
constexpr double kNoPlay_m = 5e-6;

// columns, not bytes: continuation bytes of UTF-8 take no room
std::size_t columns_of(std::string_view text) {
  std::size_t columns = 0;
  for (const char c : text) columns += (static_cast<unsigned char>(c) & 0xC0U) == 0x80U ? 0 : 1;
  return columns;
}

// one paragraph, folded; following lines are set in by `indent`
void put(std::string& out, std::string_view first, std::string_view words, std::size_t indent) {
  std::string line(first);
  bool fresh = true;
  for (const std::string_view word : base::split_words(words)) {
    if (!fresh && columns_of(line) + 1 + columns_of(word) > kColumns) {
      out += line + "\n";
      line = std::string(indent, ' ');
      fresh = true;
    }
    if (!fresh) line += ' ';
    line += word;
    fresh = false;
  }
  out += line + "\n";
}

void head(std::string& out, std::string_view key, std::string_view language) {
  out += "\n" + std::string(phrase(key, language)) + "\n";
}

std::string percent(double share_1) { return base::text_fixed(100.0 * share_1, 1); }

void put_finding(std::string& out, const FindingLine& line, std::string_view language) {
  std::string cost = line.severity;
  if (line.points_milli > 0) cost += ", " + points_words(line.earned_milli) + "/" + points_words(line.points_milli);
  put(out, "  - ", line.what + " [" + cost + "; " + line.rule + "]", 4);
  if (!line.why.empty()) put(out, "    ", phrase("text.why", language, {line.why}), 4);
  for (const EvidenceLine& proof : line.evidence) put(out, "      " + clock_words(proof.tick) + "  ", proof.words, 12);
}

void put_joint(std::string& out, const JointLine& joint, std::string_view language) {
  std::string words =
      phrase("text.joint", language,
             {quantity_words(joint.clamp_n, Dimension::Force), quantity_words(joint.capacity_nm, Dimension::Torque),
              quantity_words(joint.demand_nm, Dimension::Torque)}) +
      "; ";
  if (!joint.slips) {
    words += phrase(joint.demand_nm > joint.capacity_nm ? "text.bears" : "text.stays", language);
  } else if (joint.clearance_m < kNoPlay_m) {
    words += phrase("text.bears", language);
  } else {
    words += phrase(
        "text.knocks", language,
        {base::text_fixed(base::degrees(joint.slip_angle_rad), 2) + "\xC2\xB0",
         quantity_words(joint.clearance_m, Dimension::Length), quantity_words(joint.knock_j, Dimension::Energy)});
  }
  put(out, "  ", words, 4);
  put(out, "  ",
      phrase("text.shear", language,
             {quantity_words(joint.bolt_shear_n, Dimension::Force), quantity_words(joint.stop_m, Dimension::Length)}),
      4);
  put(out, "  ", phrase("text.runout", language, {quantity_words(joint.runout_m, Dimension::Length)}), 4);
}

void put_computed(std::string& out, const MarkSheet& sheet, std::string_view language) {
  if (sheet.bolts.empty() && !sheet.joint) return;
  head(out, "text.computed", language);
  for (const BoltLine& bolt : sheet.bolts) {
    const std::string number = base::text_from_int(static_cast<std::int64_t>(bolt.bolt + 1));
    std::string remarks;
    for (const std::string& remark : bolt.remarks) remarks += (remarks.empty() ? "" : ", ") + remark;
    if (!bolt.present) {
      put(out, "  ", phrase("text.bolt-missing", language, {number, remarks}), 4);
      continue;
    }
    std::string words = phrase("text.bolt", language,
                               {number, quantity_words(bolt.last_torque_nm, Dimension::Torque),
                                quantity_words(bolt.preload_n, Dimension::Force),
                                quantity_words(bolt.clamp_n, Dimension::Force), bolt.locker});
    if (!remarks.empty()) words += "; " + remarks;
    put(out, "  ", words, 4);
  }
  std::string order;
  for (const TighteningRound& round : sheet.rounds) {
    if (!order.empty()) order += " | ";
    for (std::size_t i = 0; i < round.size(); ++i) {
      order += (i == 0 ? "" : " ") + base::text_from_int(static_cast<std::int64_t>(round[i] + 1));
    }
  }
  if (!order.empty()) put(out, "  ", phrase("text.rounds", language, {order}), 4);
  if (sheet.joint) put_joint(out, *sheet.joint, language);
  for (const FaceLine& face : sheet.faces) {
    put(out, "  ",
        phrase("text.face", language,
               {face.face, quantity_words(face.film_worst_kg_m2, Dimension::FilmLoad), percent(face.coverage_1),
                percent(face.friction_factor_1)}),
        4);
  }
}

void put_card(std::string& out, const MarkSheet& sheet, std::string_view language) {
  if (sheet.card.empty()) return;
  head(out, "text.card", language);
  for (const CardLine& line : sheet.card) {
    const bool off = !line.agrees || (line.needed && line.written.empty());
    const std::string written = line.written.empty() ? std::string(phrase("text.nothing", language)) : line.written;
    const std::string words = line.truth.empty()
                                  ? phrase("text.card-line", language, {line.entry, written})
                                  : phrase("text.card-truth", language, {line.entry, written, line.truth});
    put(out, off ? "  ! " : "    ", words, 6);
  }
}

void put_rest(std::string& out, const MarkSheet& sheet, std::string_view language) {
  if (!sheet.met.empty()) {
    head(out, "text.met", language);
    for (const FindingLine& line : sheet.met) {
      const std::string points = line.points_milli > 0 ? " [" + points_words(line.points_milli) + "]" : "";
      put(out, "  + ", line.what + points, 4);
    }
  }
  if (!sheet.aside.empty()) {
    head(out, "text.aside", language);
    for (const FindingLine& line : sheet.aside) put(out, "    ", line.aside, 6);
  }
  head(out, "text.about", language);
  for (const std::string& note : sheet.notes) put(out, "  ", note, 4);
  for (const std::string& drawn : sheet.drawn) put(out, "  ", phrase("text.drawn", language, {drawn}), 4);
  if (!sheet.cautions.empty()) {
    head(out, "text.cautions", language);
    for (const std::string& caution : sheet.cautions) put(out, "  ", caution, 2);
  }
}

}  // namespace

std::string mark_sheet_text(const MarkSheet& sheet, std::string_view language) {
  std::string out = sheet.verdict_words + "\n";
  put(out, "", sheet.reason, 0);
  std::string about = sheet.title;
  if (!sheet.who.empty()) about += " · " + sheet.who;
  about += " · " + sheet.way + " · " + phrase("text.time", language, {clock_words(sheet.time)});
  put(out, "", about, 0);
  const rules::Totals& totals = sheet.totals;
  put(out, "",
      phrase("text.points", language,
             {points_words(totals.earned_milli), points_words(totals.judged_milli), points_words(totals.declared_milli),
              base::text_from_int(sheet.pass_mark_milli / 10)}),
      0);
  head(out, "text.competences", language);
  for (const CompetenceLine& line : sheet.competences) {
    if (line.totals.declared_milli == 0) continue;
    const bool whole = line.totals.judged_milli == line.totals.declared_milli;
    put(out, "  ",
        phrase(whole ? "text.competence" : "text.competence-part", language,
               {line.name, points_words(line.totals.earned_milli), points_words(line.totals.judged_milli),
                points_words(line.totals.declared_milli)}),
        4);
  }
  if (!sheet.lost.empty()) {
    head(out, "text.lost", language);
    for (const FindingLine& line : sheet.lost) put_finding(out, line, language);
  }
  put_computed(out, sheet, language);
  put_card(out, sheet, language);
  put_rest(out, sheet, language);
  return out;
}

}  // namespace proofstand::report
