#include "viewer/piece_times.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <chrono>
#include <map>
#include <set>

#include "model/model.h"
#include "tests/support/demo_job.h"
#include "tests/support/laid_sample.h"
#include "viewer/piece_words.h"
#include "viewer/playback.h"

namespace viewer {
namespace {

// Things and bricks that come and go at any time, some at the same moment, some never, some before.
Scene anyScene() {
  Scene scene;
  const int stages = *rc::gen::inRange(1, 12);
  scene.stageCount = stages;
  const auto moment = [&] { return float(*rc::gen::inRange(-16, stages * 16 + 16)) / 16; };
  const int things = *rc::gen::inRange(0, 30);
  for (int e = 0; e < things; ++e) {
    ElementRange range;
    range.indexCount = *rc::gen::inRange(0, 5) == 0 ? 0 : 36;
    range.complete = moment();
    range.goes = *rc::gen::inRange(0, 2) ? float(model::kNever) : moment();
    if (*rc::gen::inRange(0, 3) == 0) {
      range.firstUnit = std::uint32_t(scene.units.size());
      range.unitCount = std::uint32_t(*rc::gen::inRange(1, 20));
      for (std::uint32_t u = 0; u < range.unitCount; ++u) {
        scene.units.push_back({0, 0, moment(), std::uint32_t(e)});
        scene.modelUnits.push_back(std::uint32_t(scene.modelUnits.size()));
      }
    }
    scene.elements.push_back(range);
  }
  return scene;
}

using Seen = std::pair<PieceEvent::Kind, std::uint32_t>;

// All that should be met, with its moment.
std::map<Seen, float> wanted(const Scene& scene) {
  using enum PieceEvent::Kind;
  std::map<Seen, float> all;
  const auto add = [&](PieceEvent::Kind kind, size_t i, float moment) {
    if (moment > 0 && double(moment) <= scene.stageCount) all[{kind, std::uint32_t(i)}] = moment;
  };
  for (size_t u = 0; u < scene.units.size(); ++u) add(UnitLaid, u, scene.units[u].appears);
  for (size_t e = 0; e < scene.elements.size(); ++e) {
    const ElementRange& range = scene.elements[e];
    if (range.indexCount == 0) continue;
    if (range.unitCount == 0) add(ThingMade, e, range.complete);
    add(ThingGone, e, range.goes);
  }
  return all;
}

RC_GTEST_PROP(PieceTimes, everyPieceIsMetOnceAtItsMomentAndInTurn, ()) {
  const Scene scene = anyScene();
  const PieceTimes pieces(scene);
  std::map<Seen, float> met;
  for (size_t m = 0; m < pieces.momentCount(); ++m) {
    const float moment = pieces.beats().ends()[m];
    if (m > 0) RC_ASSERT(moment > pieces.beats().ends()[m - 1]);
    RC_ASSERT(pieces.momentAt(double(moment)) == m);
    for (size_t i = 0; i < pieces.eventCount(m); ++i) {
      const PieceEvent event = pieces.event(m, i);
      RC_ASSERT(met.insert({{event.kind, event.index}, moment}).second);
    }
    RC_ASSERT(pieces.countAt(double(moment)) == met.size());
  }
  RC_ASSERT(met == wanted(scene));
  RC_ASSERT(pieces.count() == met.size());
}

RC_GTEST_PROP(PieceTimes, noStageIsPassedOverAndTheEndIsReached, ()) {
  const Scene scene = anyScene();
  const PieceTimes pieces(scene);
  for (int stage = 0; stage < int(scene.stageCount); ++stage) {
    const auto& ends = pieces.beats().ends();
    RC_ASSERT(std::any_of(ends.begin(), ends.end(), [&](float end) {
      return end > float(stage) && end <= float(stage + 1);
    }));
  }
  RC_ASSERT(double(pieces.beats().ends().back()) == scene.stageCount);
}

RC_GTEST_PROP(PieceTimes, forwardsAndThenBackwardsReturns, ()) {
  const Scene scene = anyScene();
  const PieceTimes pieces(scene);
  const Beats& beats = pieces.beats();
  const int steps = *rc::gen::inRange(0, 60);
  std::vector<double> path{0};
  for (int i = 0; i < steps; ++i)
    if (const auto next = beats.nextEnd(path.back())) path.push_back(*next);
  for (size_t i = path.size() - 1; i > 0; --i)
    RC_ASSERT(beats.endBefore(path[i]).value_or(0) == path[i - 1]);
}

RC_GTEST_PROP(PieceTimes, playedEveryPieceHasTheSameTime, ()) {
  const Scene scene = anyScene();
  const PieceTimes pieces(scene);
  Playback playback;
  playback.setStageCount(int(scene.stageCount));
  playback.setBeats(Pace::Piece,
                    std::shared_ptr<const Beats>(std::shared_ptr<void>(), &pieces.beats()));
  playback.setPace(Pace::Piece);
  playback.setSpeed(*rc::gen::element(0.25, 1.0, 8.0));
  playback.play();
  const double each = 1 / (Playback::kPiecesPerSecond * playback.speed());
  for (const float end : pieces.beats().ends()) {
    playback.advance(each / 2);
    RC_ASSERT(playback.time() < double(end));
    playback.advance(each / 2);
    RC_ASSERT(std::abs(playback.time() - double(end)) < 1e-6);
  }
}

TEST(PieceTimes, OfAMillionBricksTakeTwelveBytesEachAndLittleTime) {
  Scene scene;
  scene.stageCount = 60;
  scene.elements.resize(1);
  scene.elements[0].indexCount = 36;
  scene.elements[0].unitCount = 1000000;
  for (int i = 0; i < 1000000; ++i)
    scene.units.push_back({0, 0, 59.9f * float((i * 7919LL) % 1000000 + 1) / 1000000, 0});
  const auto before = std::chrono::steady_clock::now();
  const PieceTimes pieces(scene);
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - before;
  EXPECT_EQ(pieces.count(), 1000000u);
  EXPECT_LT(took.count(), 3) << "some tenths of a second where nothing else runs";
}

TEST(PieceTimes, NamesWhatHasJustComeAndGone) {
  const model::Model model = support::laidSample();
  const Scene scene = buildScene(model);
  const PieceTimes pieces(scene);
  EXPECT_EQ(pieceWords(model, scene, pieces, 0), "");
  std::set<std::string> words;
  for (const float end : pieces.beats().ends())
    words.insert(pieceWords(model, scene, pieces, double(end)));
  const auto says = [&](const std::string& part) {
    return std::any_of(words.begin(), words.end(),
                       [&](const std::string& w) { return w.find(part) != std::string::npos; });
  };
  EXPECT_TRUE(says("course 14, whole brick"));
  EXPECT_TRUE(says("Taken away: spoil"));
  EXPECT_TRUE(says("concrete"));
  const std::string total = std::to_string(pieces.count());
  EXPECT_EQ(pieceCountWords(pieces, scene.stageCount), "piece " + total + " of " + total);
}

TEST(PieceTimes, OfTheDemosMeetEveryBrickLaid) {
  const model::Model model = model::buildModel(test_support::demoJob("garage"));
  const Scene scene = buildScene(model);
  const PieceTimes pieces(scene);
  size_t units = 0;
  for (size_t m = 0; m < pieces.momentCount(); ++m)
    for (size_t i = 0; i < pieces.eventCount(m); ++i)
      units += pieces.event(m, i).kind == PieceEvent::Kind::UnitLaid;
  EXPECT_EQ(units, scene.units.size());
  EXPECT_GT(units, 1000u);
}

}  // namespace
}  // namespace viewer
