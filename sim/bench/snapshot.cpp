#include "sim/bench/snapshot.h"

#include <type_traits>

#include "sim/base/byte_stream.h"
#include "sim/base/number_text.h"
#include "sim/bench/bench.h"
#include "sim/bench/state_visit.h"

namespace proofstand::bench {
namespace {

constexpr std::string_view kFormat = "proofstand bench snapshot";

class Writer {
 public:
  void section(std::string_view /*words*/, int /*index*/) {}
  template <class Field>
  void operator()(std::string_view /*name*/, const Field& field) {
    if constexpr (std::is_same_v<Field, event::Action>) {
      out.put(field.tick);
      out.put(static_cast<std::int64_t>(field.kind));
      for (const std::int64_t number : field.numbers) out.put(number);
      out.put(std::string_view(field.text));
    } else if constexpr (std::is_same_v<Field, std::string>) {
      out.put(std::string_view(field));
    } else if constexpr (std::is_same_v<Field, double> || std::is_same_v<Field, bool>) {
      out.put(field);
    } else {
      out.put(static_cast<std::int64_t>(field));
    }
  }
  base::ByteWriter out;
};

class Reader {
 public:
  explicit Reader(std::string_view bytes) : in(bytes) {}
  void section(std::string_view /*words*/, int /*index*/) {}
  template <class Field>
  void operator()(std::string_view /*name*/, Field& field) {
    if constexpr (std::is_same_v<Field, event::Action>) {
      field.tick = in.number();
      field.kind = static_cast<event::ActionKind>(in.number());
      for (std::int64_t& number : field.numbers) number = in.number();
      field.text = std::string(in.text());
    } else if constexpr (std::is_same_v<Field, std::string>) {
      field = std::string(in.text());
    } else if constexpr (std::is_same_v<Field, double>) {
      field = in.real();
    } else if constexpr (std::is_same_v<Field, bool>) {
      field = in.flag();
    } else {
      field = static_cast<Field>(in.number());
    }
  }
  base::ByteReader in;
};

/// Every field as a line of text: "hole 3 preload" and its value.
class Lister {
 public:
  struct Line {
    std::string path;
    std::string value;
  };
  void section(std::string_view words, int index) {
    part_ = std::string(words);
    // people count from one
    if (index >= 0) part_ += " " + base::text_from_int(index + 1);
  }
  template <class Field>
  void operator()(std::string_view name, const Field& field) {
    std::string value;
    if constexpr (std::is_same_v<Field, event::Action>) {
      value = std::string(event::spec_of(field.kind).name) + " at " + base::text_from_int(field.tick);
      for (const std::int64_t number : field.numbers) value += " " + base::text_from_int(number);
    } else if constexpr (std::is_same_v<Field, std::string>) {
      value = field;
    } else if constexpr (std::is_same_v<Field, double>) {
      value = base::text_from_double(field);
    } else {
      value = base::text_from_int(static_cast<std::int64_t>(field));
    }
    lines.push_back({part_ + " " + std::string(name), value});
  }
  std::vector<Line> lines;

 private:
  std::string part_;
};

std::vector<Lister::Line> list_fields(const BenchState& state, bool faces) {
  Lister lister;
  visit_state(state, lister, faces);
  return std::move(lister.lines);
}

std::string difference_in(const BenchState& a, const BenchState& b, bool faces) {
  const std::vector<Lister::Line> left = list_fields(a, faces);
  const std::vector<Lister::Line> right = list_fields(b, faces);
  for (std::size_t i = 0; i < left.size() && i < right.size(); ++i) {
    if (left[i].path != right[i].path) return left[i].path + ": there / " + right[i].path + " there";
    if (left[i].value != right[i].value) {
      return left[i].path + ": " + left[i].value + " / " + right[i].value;
    }
  }
  if (left.size() == right.size()) return {};
  return left.size() > right.size() ? left[right.size()].path + ": there / missing"
                                    : right[left.size()].path + ": missing / there";
}

base::Error damaged(std::string what) {
  return {"snapshot", "", std::move(what), "Replay the attempt from its start instead."};
}

}  // namespace

std::string state_bytes(const BenchState& state) {
  Writer writer;
  visit_state(state, writer, true);
  return writer.out.bytes();
}

bool read_state_bytes(std::string_view bytes, BenchState& state) {
  Reader reader(bytes);
  visit_state(state, reader, true);
  return !reader.in.failed() && reader.in.at_end();
}

base::Digest hash_of_state(const BenchState& state, FaceDigests kept) {
  Writer writer;
  visit_state(state, writer, false);
  std::string bytes = writer.out.bytes();
  const std::size_t faces = 2 * state.rotors.size();
  kept.digests.resize(faces);
  kept.versions.resize(faces, -1);
  for (std::size_t i = 0; i < faces; ++i) {
    const FaceState& face = state.rotors[i / 2].faces[i % 2];
    if (kept.versions[i] != face.version) {
      Writer of_face;
      FaceState::visit(face, of_face);
      kept.digests[i] = base::digest_of(of_face.out.bytes());
      kept.versions[i] = face.version;
    }
    bytes.append(reinterpret_cast<const char*>(kept.digests[i].data()), kept.digests[i].size());
  }
  return base::digest_of(bytes);
}

base::Digest Bench::state_hash() const { return hash_of_state(state_, {face_digests_, face_digest_versions_}); }

std::string Bench::snapshot() const {
  base::ByteWriter out;
  out.put(kFormat);
  out.put(static_cast<std::int64_t>(kBenchVersion));
  out.put(inside_->setup.seed);
  out.put(static_cast<std::int64_t>(events_.size()));
  out.put(std::string_view(state_bytes(state_)));
  const base::Digest seal = base::digest_of(out.bytes());
  return out.bytes() + std::string(reinterpret_cast<const char*>(seal.data()), seal.size());
}

base::Result<Bench> Bench::restore(BenchSetup setup, std::string_view bytes, std::vector<event::Record> events_before) {
  const std::size_t seal_size = sizeof(base::Digest);
  if (bytes.size() < seal_size) return damaged("These bytes are too few for a snapshot of the bench.");
  const std::string_view body = bytes.substr(0, bytes.size() - seal_size);
  const base::Digest seal = base::digest_of(body);
  const std::string_view given = bytes.substr(body.size());
  if (given != std::string_view(reinterpret_cast<const char*>(seal.data()), seal.size())) {
    return damaged("The snapshot's bytes were changed or cut.");
  }
  base::ByteReader in(body);
  if (in.text() != kFormat) return damaged("These bytes are no snapshot of the bench.");
  if (in.number() != kBenchVersion) return damaged("The snapshot was made by another version of the bench.");
  if (in.word() != setup.seed) return damaged("The snapshot belongs to a bench with another seed.");
  if (in.number() != static_cast<std::int64_t>(events_before.size())) {
    return damaged("The snapshot was made after another number of events.");
  }
  const std::string_view state = in.text();
  Bench bench(std::move(setup));
  if (in.failed() || !in.at_end() || !read_state_bytes(state, bench.state_)) {
    return damaged("The snapshot does not fit this setup.");
  }
  bench.events_ = std::move(events_before);
  return bench;
}

std::string Bench::first_difference(const BenchState& a, const BenchState& b) {
  // the long lists of film cells only when nothing else differs
  const std::string first = difference_in(a, b, false);
  return first.empty() ? difference_in(a, b, true) : first;
}

}  // namespace proofstand::bench
