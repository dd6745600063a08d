#include "sim/hand/hand_script.h"
#include "sim/hand/instructions.h"
#include "sim/hand/reaching.h"

namespace proofstand::hand {
namespace {

constexpr base::Tick kMostTicks = 60;  // of one step: a quarter of a second

Task work_handed(Work& work, const Instruction& line) {
  const HandId main = line.says(Say::LeftHanded) ? HandId::Left : HandId::Right;
  if (main == work.memory.main) co_return;
  work.memory.hold.kind = StandingHold::Kind::None;
  co_await draw_away(work, HandId::Left);
  co_await draw_away(work, HandId::Right);
  work.memory.main = main;
}

Task wait_for(Work& work, const Instruction& line) {
  // in pieces, so that a run can be stopped in between
  const base::Tick until = work.now() + base::ticks_from(line.time_s.value_or(0.0));
  while (work.now() < until) co_await work.pause(until - work.now() < 48 ? until - work.now() : 48);
}

Task begin(Work& work, const Instruction& line) {
  const bool frees = line.doing == Doing::HandOver || line.doing == Doing::LetGo || line.doing == Doing::MoveWheel;
  if (!frees) co_await restore_hold(work);
  co_await work_line(work, line);
}

}  // namespace

Task work_line(Work& work, const Instruction& line) {
  switch (line.doing) {
    case Doing::WorkHanded:
      return work_handed(work, line);
    case Doing::Glove:
    case Doing::Bare:
      return do_glove(work, line);
    case Doing::Take:
      return do_take(work, line);
    case Doing::PutBack:
      return do_put_back(work, line);
    case Doing::Pass:
      return do_pass(work, line);
    case Doing::LetGo:
      return do_let_go(work, line);
    case Doing::TurnOver:
      return do_turn_over(work, line);
    case Doing::Touch:
      return do_touch(work, line);
    case Doing::HoldNear:
      return do_hold_near(work, line);
    case Doing::Bring:
      return do_bring(work, line);
    case Doing::Wait:
      return wait_for(work, line);
    case Doing::Crack:
      return do_crack(work, line);
    case Doing::RunOut:
      return do_run_out(work, line);
    case Doing::Start:
      return do_start(work, line);
    case Doing::RunIn:
      return do_run_in(work, line);
    case Doing::Snug:
      return do_snug(work, line);
    case Doing::Tighten:
      return do_tighten(work, line);
    case Doing::SetTool:
      return do_set_tool(work, line);
    case Doing::PickClean:
      return do_pick_clean(work, line);
    case Doing::HoldAgainst:
      return do_hold_against(work, line);
    case Doing::TurnAgainst:
    case Doing::TurnWith:
      return do_turn_rotor(work, line);
    case Doing::TakeOff:
      return do_take_off(work, line);
    case Doing::PutOn:
      return do_put_on(work, line);
    case Doing::LayDown:
      return do_lay_down(work, line);
    case Doing::Wet:
      return do_wet(work, line);
    case Doing::Squeeze:
      return do_squeeze(work, line);
    case Doing::Wipe:
      return do_wipe(work, line);
    case Doing::WipeBoth:
      return do_wipe_both(work, line);
    case Doing::Measure:
      return do_measure(work, line);
    case Doing::MeasureAcross:
      return do_measure_across(work, line);
    case Doing::ReadRunout:
      return do_read_runout(work, line);
    case Doing::LookAt:
      return do_look_at(work, line);
    case Doing::Write:
      return do_write(work, line);
    case Doing::WriteRead:
      return do_write_read(work, line);
    case Doing::MoveWheel:
      return do_move_wheel(work, line);
    case Doing::SpinWheel:
      return do_spin_wheel(work, line);
    case Doing::StopWheel:
      return do_stop_wheel(work, line);
    case Doing::HoldTyre:
      return do_hold_tyre(work, line);
    case Doing::HandOver:
      return do_hand_over(work, line);
  }
  return {};
}

struct ModelledHand::Inside {
  std::shared_ptr<const HandScript> first;  // names the file in messages, for as long as the hand works
  std::shared_ptr<const HandScript> script;
  Work work;
  std::size_t at = 0;  // instruction being worked, or to be begun
  Task task;           // its procedure; last, so that it goes before what it works with

  Inside(std::shared_ptr<const HandScript> s, HandSkill skill, std::uint64_t seed)
      : first(std::move(s)), script(first), work(*first, std::move(skill), seed) {}

  // begins, or lets go on, what is due at this tick
  void go_on() {
    if (!task.begun()) {
      work.line = &script->instructions[at];
      task = begin(work, *work.line);
      work.waiting.innermost = task.handle();
    }
    work.waiting.innermost.resume();
    if (task.done()) {
      task = Task();
      work.waiting = {};
      work.memory.clicked = false;
      work.memory.thrown = false;
      ++at;
    }
  }
};

ModelledHand::ModelledHand(std::shared_ptr<const HandScript> script, HandSkill skill, std::uint64_t seed)
    : inside_(std::make_unique<Inside>(std::move(script), std::move(skill), seed)) {}
ModelledHand::~ModelledHand() = default;
ModelledHand::ModelledHand(ModelledHand&&) noexcept = default;
ModelledHand& ModelledHand::operator=(ModelledHand&&) noexcept = default;

ModelledHand::Step ModelledHand::step(bench::Bench& bench, const Sink& sink) {
  Inside& in = *inside_;
  const base::Tick until = bench.tick() + kMostTicks;
  in.work.bench = &bench;
  in.work.sink = &sink;
  Step result = Step::Going;
  while (true) {
    if (in.at >= in.script->instructions.size() || bench.over()) {
      result = Step::Finished;
      break;
    }
    if (in.work.stuck) {
      result = Step::Stuck;
      break;
    }
    if (in.task.begun() && bench.tick() < in.work.wake) {
      const base::Tick to = in.work.wake < until ? in.work.wake : until;
      bench.advance_to(to);
      if (bench.tick() < in.work.wake) break;
    }
    in.go_on();
    if (bench.tick() >= until) break;
  }
  in.work.bench = nullptr;
  in.work.sink = nullptr;
  return result;
}

std::size_t ModelledHand::line() const {
  const Inside& in = *inside_;
  const auto& all = in.script->instructions;
  return all[in.at < all.size() ? in.at : all.size() - 1].line;
}

const base::Error& ModelledHand::trouble() const { return inside_->work.trouble; }

void ModelledHand::go_on_with(std::shared_ptr<const HandScript> more) {
  Inside& in = *inside_;
  // lines of their own number, so that the same line twice does not go wrong twice alike
  in.work.lines_before += in.script->instructions.size();
  in.script = std::move(more);
  in.at = 0;
}

void ModelledHand::begin_instruction_again() {
  Inside& in = *inside_;
  in.task = Task();
  in.work.waiting = {};
  in.work.wake = 0;
  in.work.stuck = false;
  in.work.memory.at = {};
}

}  // namespace proofstand::hand
