// What the overlay of readings says and shows.
#include <algorithm>

#include <glm/geometric.hpp>

#include "model/programme/level_made.h"
#include "tests/support/demo_job.h"
#include "tests/viewer/overlays/overlay_fixture.h"
#include "viewer/overlays/heat_map.h"

namespace viewer {
namespace {

std::vector<double> times(const model::Model& model) {
  return model::timesOfLevels(model.settingOut, model.works, model.programme);
}

class ReadingsOverlay : public OverlayTest {
 protected:
  void SetUp() override {
    OverlayTest::SetUp();
    open(test_support::demoJob("orchard-house"));
    overlays_.readings = true;
  }
  static int count(const std::vector<DrawnText>& all, const std::string& words) {
    return int(std::count_if(all.begin(), all.end(),
                             [&](const DrawnText& text) { return text.text == words; }));
  }
};

TEST_F(ReadingsOverlay, FiguresWhatIsOutInPlan) {
  const auto all = texts("plan", endOf("pour-foundations"), 1920, 1080);
  int out = 0;
  for (const model::Deviation& d : asBuilt_.deviations) {
    if (!d.latest || d.verdict != model::Verdict::Out || d.target != "top-of-concrete") continue;
    EXPECT_GE(count(all, model::offText(d.kind, d.off)), 1) << d.what;
    ++out;
  }
  EXPECT_GT(out, 0);
}

TEST_F(ReadingsOverlay, SaysNothingOfWhatIsNotBuiltYet) {
  const auto plate = std::find_if(
      asBuilt_.deviations.begin(), asBuilt_.deviations.end(), [](const model::Deviation& d) {
        return d.target == "plate-top" && d.verdict == model::Verdict::Out;
      });
  ASSERT_NE(plate, asBuilt_.deviations.end());
  const std::string words = model::offText(plate->kind, plate->off);
  EXPECT_EQ(count(texts("south", endOf("pour-foundations")), words), 0);
  EXPECT_EQ(count(texts("south", endOf("wall-plate")), words), 1);
}

TEST_F(ReadingsOverlay, ShowsOneSetAlone) {
  const double late = endOf("completion");
  readingSet_ = 0;
  const auto first = texts("plan", late);
  readingSet_ = 1;
  const auto second = texts("plan", late);
  const auto tapes = [&](const auto& all) {
    return std::any_of(all.begin(), all.end(),
                       [](const DrawnText& text) { return text.text.rfind("A-C ", 0) == 0; });
  };
  EXPECT_TRUE(tapes(first)) << "the diagonals were taped with the concrete";
  EXPECT_FALSE(tapes(second));
}

TEST_F(ReadingsOverlay, ExplainsItsHeatMapInWords) {
  const auto all = texts("plan", endOf("pour-foundations"));
  for (int i = 0; i < kHeatBands; ++i) EXPECT_EQ(count(all, nameOf(HeatBand(i))), 1) << i;
}

TEST_F(ReadingsOverlay, HasNoHeatMapBeforeThereIsConcrete) {
  EXPECT_EQ(count(texts("plan", endOf("dig-cellar")), nameOf(HeatBand::Within)), 0);
  EXPECT_EQ(count(texts("plan", endOf("cellar-slab")), nameOf(HeatBand::Within)), 1);
}

TEST(HeatBands, FollowTheVerdictToEitherSide) {
  const model::Allowed allowed{0.010, 0.005, ""};
  EXPECT_EQ(bandOf(0, allowed), HeatBand::Within);
  EXPECT_EQ(bandOf(0.009, allowed), HeatBand::HighEdge);
  EXPECT_EQ(bandOf(0.011, allowed), HeatBand::HighOut);
  EXPECT_EQ(bandOf(-0.0045, allowed), HeatBand::LowEdge);
  EXPECT_EQ(bandOf(-0.006, allowed), HeatBand::LowOut);
}

TEST_F(ReadingsOverlay, SpreadsDeviationsOverConcreteOnly) {
  const auto cells =
      heatCells(model_.job, model_.settingOut, times(model_), asBuilt_, std::nullopt);
  ASSERT_FALSE(cells.empty());
  bool nearE = false;
  for (const HeatCell& cell : cells) {
    EXPECT_GT(cell.half, 0);
    for (const model::Deviation& d : asBuilt_.deviations)
      if (d.verdict == model::Verdict::Out && d.latest && d.target == "top-of-concrete" &&
          glm::length(d.place.at - cell.middle) < 0.5)
        nearE |= cell.band == (d.off < 0 ? HeatBand::LowOut : HeatBand::HighOut) ||
                 cell.band == (d.off < 0 ? HeatBand::LowEdge : HeatBand::HighEdge);
  }
  EXPECT_TRUE(nearE) << "cells by a reading that is out show it";
  // The middle of the part without a cellar has no concrete.
  EXPECT_TRUE(std::none_of(cells.begin(), cells.end(), [](const HeatCell& cell) {
    return cell.middle.x > 1.5 && cell.middle.x < 3.5 && cell.middle.y > 2 && cell.middle.y < 4;
  }));
}

// Readings at the ends of an L's arms: the triangle between them lies across the notch.
TEST(HeatCells, OfASlabKeepOutOfTheNotch) {
  model::Job job;
  job.outline = {{0, 0}, {9, 0}, {9, 4}, {4, 4}, {4, 9}, {0, 9}};
  const model::Model l = model::buildModel(job);
  model::AsBuilt built;
  for (const model::Vec2& at : {model::Vec2{1, 1}, {8.5, 1}, {8.5, 3.5}, {3.5, 8.5}, {1, 8.5}}) {
    model::Deviation d;
    d.target = "structural-floor";
    d.kind = model::ReadingKind::Level;
    d.place.at = at;
    d.latest = true;
    d.allowed = {0.005, 0.005, ""};
    built.deviations.push_back(d);
  }
  const auto cells = heatCells(l.job, l.settingOut, times(l), built, std::nullopt);
  const auto inNotch = [](const HeatCell& cell) { return cell.middle.x > 4 && cell.middle.y > 4; };
  EXPECT_GT(cells.size(), 200u);
  EXPECT_EQ(std::count_if(cells.begin(), cells.end(), inNotch), 0);
}

}  // namespace
}  // namespace viewer
