// Every overlay together, over drawn jobs in drawn views: no text over another, none off the sheet.
#include "tests/support/dice.h"
#include "tests/support/random_readings.h"
#include "tests/viewer/overlays/overlay_fixture.h"
#include "tests/viewer/overlays/texts_apart.h"

namespace viewer {
namespace {

using test_support::Dice;

struct Named {
  const char* name;
  bool Overlays::*flag;
};
constexpr Named kEach[] = {
    {"levels", &Overlays::levels},
    {"lines", &Overlays::lines},
    {"corners", &Overlays::corners},
    {"dimensions", &Overlays::dimensions},
    {"captions", &Overlays::captions},
    {"title", &Overlays::titleBlock},
    {"tape", &Overlays::tape},
    {"rod", &Overlays::rod},
    {"setting-out", &Overlays::settingOut},
    {"readings", &Overlays::readings},
    {"instrument", &Overlays::instrument},
    {"gauge rods", &Overlays::gaugeRods},
    {"cut units", &Overlays::cutUnits},
};

struct Size {
  int width, height;
  float unit;
};
constexpr Size kSizes[] = {{1280, 720, 1}, {3840, 2160, 3}, {1280, 720, 1}, {900, 1200, 0.88f}};

class AllOverlays : public OverlayTest {
 protected:
  // With what was read and from where, so that every overlay has something to say.
  void draw(unsigned seed) {
    auto drawn = test_support::randomReadings(seed);
    if (!drawn.job.site.benchMark)
      drawn.job.site.benchMark = model::BenchMark{"Mark", drawn.job.outline[0] - 3.0, 0.2};
    drawn.job.readings.push_back({"Concrete", "", "", "", drawn.rows});
    open(drawn.job);
  }
  // A sheet in a drawn view; says which.
  std::string look(Dice& dice, const Size& size) {
    const std::string view = dice.pick(standardViewNames());
    const double time = dice.real(0, double(model_.programme.stages.size()));
    turned_ = raised_ = 0;
    nearer_ = 1;
    at_.reset();
    // Also from where no standard view is: near by, by the ground, down a dig.
    if (dice.chance(50)) {
      nearer_ = dice.real(0.15, 1.4);
      turned_ = dice.real(-3.1, 3.1);
      raised_ = dice.real(-0.5, 0.9);
      const auto& corners = model_.settingOut.corners;
      const auto& corner = corners[size_t(dice.between(0, int(corners.size()) - 1))];
      if (dice.chance(50)) at_ = scene_.local({corner.at, dice.real(-2, 4)});
    }
    selected_ = dice.chance(30) ? std::uint32_t(dice.between(0, int(scene_.elements.size()) - 1))
                                : kNothing;
    standing_.reset();
    if (dice.chance(60) && !model_.job.setUps.empty()) standing_ = model_.job.setUps.back();
    readingSet_.reset();
    if (dice.chance(30)) readingSet_ = 0;
    unit_ = size.unit;
    all_ = texts(view, time, size.width, size.height);
    return view + " at " + std::to_string(time) + ", nearer " + std::to_string(nearer_) +
           ", turned " + std::to_string(turned_) + ", raised " + std::to_string(raised_);
  }

  std::vector<DrawnText> all_;
};

TEST_F(AllOverlays, KeepTheirTextsApartAndOnTheSheetOverDrawnJobsAndViews) {
  size_t said = 0;
  for (unsigned seed = 0; seed < 50 && !HasFailure(); ++seed) {
    Dice dice(seed);
    draw(seed * 37 + 5);
    for (const Size& size : kSizes) {
      std::string shown;
      // All of them, then some.
      const bool every = &size == &kSizes[0] || dice.chance(30);
      for (const Named& each : kEach) {
        overlays_.*each.flag = every || dice.chance(55);
        if (overlays_.*each.flag) shown += std::string(" ") + each.name;
      }
      const std::string where = look(dice, size);
      expectApart(all_, {0, 0, float(size.width), float(size.height)},
                  "seed " + std::to_string(seed) + ", " + where + ", shown" + shown);
      said += all_.size();
    }
  }
  EXPECT_GT(said, 5000u) << "too little was said to be in the way of anything";
}

}  // namespace
}  // namespace viewer
