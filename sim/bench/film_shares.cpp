#include "sim/bench/film_shares.h"

namespace proofstand::bench {
namespace {

using physics::FilmBody;

Exchange between(FilmBody first, FilmBody second, double smear = 1.0) {
  Exchange exchange;
  for (std::size_t s = 0; s < kSpecies; ++s) {
    const physics::TransferShares shares = physics::transfer_shares(first, second, static_cast<Film>(s));
    const double most = 1.0 - shares.there_1;
    const double back = shares.back_1 * smear;
    exchange.there_1[s] = shares.there_1;
    exchange.back_1[s] = back < most ? back : most;
  }
  // skin and bench take up no alcohol worth following
  exchange.there_1[static_cast<std::size_t>(Film::Alcohol)] = 0.0;
  exchange.back_1[static_cast<std::size_t>(Film::Alcohol)] = 0.0;
  return exchange;
}

Exchange under_rag(FilmBody rag, double soaked_up, double left_wet) {
  Exchange exchange = between(FilmBody::Metal, rag);
  exchange.there_1[static_cast<std::size_t>(Film::Alcohol)] = soaked_up;
  exchange.back_1[static_cast<std::size_t>(Film::Alcohol)] = left_wet;
  return exchange;
}

// what touches a wet film smears three times as much
constexpr double kWetSmear_1 = 3.0;

/// Built once: wipes ask for every cell.
struct Table {
  Exchange skin_dry = between(FilmBody::Skin, FilmBody::Metal);
  Exchange skin_wet = between(FilmBody::Skin, FilmBody::Metal, kWetSmear_1);
  Exchange glove_dry = between(FilmBody::Glove, FilmBody::Metal);
  Exchange glove_wet = between(FilmBody::Glove, FilmBody::Metal, kWetSmear_1);
  Exchange dry_rag = under_rag(FilmBody::DryRag, 0.70, 0.10);
  Exchange wet_rag = under_rag(FilmBody::WetRag, 0.30, 0.50);
  Exchange bench = between(FilmBody::Bench, FilmBody::Metal);
  Exchange rag_in_hand = between(FilmBody::DryRag, FilmBody::Skin);
};

const Table& table() {
  static const Table once;
  return once;
}

}  // namespace

const Exchange& fingers_on_metal(bool gloved, bool wet) {
  if (gloved) return wet ? table().glove_wet : table().glove_dry;
  return wet ? table().skin_wet : table().skin_dry;
}

const Exchange& metal_under_rag(bool wet) { return wet ? table().wet_rag : table().dry_rag; }

const Exchange& rag_in_hand() { return table().rag_in_hand; }

const Exchange& bench_under_rotor() { return table().bench; }

}  // namespace proofstand::bench
