// Readings held against the drawing.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/asbuilt/level_surface.h"
#include "model/job/reading_targets.h"
#include "model/works/level_pins.h"
#include "tests/model/asbuilt/as_built_support.h"

namespace asbuilt_test {
namespace {

struct Known {
  Reading reading;
  double error = 0;  // metres
  Vec2 shift{0, 0};  // of a corner
};

// A drawn job's points read with errors of up to `most` millimetres. What is drawn is taken from
// the setting-out by another way than the library's: by wall, from the faces' own lines.
class Surveyor {
 public:
  Surveyor(Job job, unsigned seed, double most)
      : dice_(seed), job_(std::move(job)), out_(deriveSettingOut(job_)), most_(most) {
    job_.site.marks = {{"Peg", {0, 0}, 0.321}};
    job_.site.benchMark.reset();
    job_.setUps = {{"1", "", {0, 0}, "Peg", 1.234, 5, ""}};
    job_.readings.clear();
    job_.tolerances.clear();
  }

  std::vector<Known> survey() {
    const Levels& levels = out_.levels;
    for (size_t i = 0; i < out_.walls.size(); ++i) {
      const WallLine& wall = out_.walls[i];
      const std::string& from = out_.corners[wall.from].letter;
      const std::string& to = out_.corners[wall.to].letter;
      level("damp-course", from, levels.dampCourse);
      level("plate-top", from, levels.plateTop);
      level("finished-floor", from, levels.finishedFloor[0]);
      const double s = dice_.real(0, wall.length);
      for (const FoundationRun& run : out_.foundations) {
        if (run.wall != i || s < run.from + 0.001 || s > run.to - 0.001) continue;
        level("top-of-concrete", from + "-" + to, run.top, s);
        level("top-of-concrete", to + "-" + from, run.top, wall.length - s + 0.0005);
        if (!run.onCellar) level("formation", from + "-" + to, run.formation, s);
      }
      face("outer-face", from + "-" + to, s);
      face("inner-face", to + "-" + from, s);
      const WallFaces& faces = out_.faces[i];
      corner("outer-face", from, faces.outerFace.start);
      corner("inner-face", from, faces.innerFace.start);
      tape(ReadingKind::Side, from + "-" + to, faces.outerFace.start, faces.outerFace.end);
      const Vec2& next = out_.faces[(i + 1) % out_.walls.size()].outerFace.end;
      if (out_.walls.size() > 3)
        tape(ReadingKind::Diagonal, from + "-" + out_.corners[(i + 2) % out_.walls.size()].letter,
             faces.outerFace.start, next);
    }
    for (const BuiltOpening& opening : out_.openings) {
      level("sill", opening.name, opening.sill);
      level("head", opening.name, opening.head);
    }
    std::vector<Reading> rows;
    for (const Known& each : known_) rows.push_back(each.reading);
    addSet(job_, std::move(rows));
    return known_;
  }

  const Job& job() const { return job_; }
  const SettingOut& out() const { return out_; }

 private:
  double error() { return std::round(dice_.real(-most_, most_)) / 1000; }
  void level(const std::string& target, const std::string& at, double drawn,
             std::optional<double> along = std::nullopt) {
    const double e = error();
    Reading reading = levelAt(target, at, drawn + e, along);
    if (dice_.chance(50)) {
      reading.kind = ReadingKind::Staff;
      reading.setUp = "1";
      reading.value = 0.321 + 1.234 - (drawn + e);  // a bigger reading is a lower point
    }
    known_.push_back({reading, e, {}});
  }
  void face(const std::string& target, const std::string& wall, double along) {
    const double e = error();
    known_.push_back({faceAt(target, wall, along, e), e, {}});
  }
  void corner(const std::string& target, const std::string& letter, const Vec2& drawn) {
    const Vec2 shift{error(), error()};
    known_.push_back({cornerAt(target, letter, drawn + shift), glm::length(shift), shift});
  }
  void tape(ReadingKind kind, const std::string& at, const Vec2& a, const Vec2& b) {
    const double e = error();
    known_.push_back({tapeOf(kind, at, glm::distance(a, b) + e), e, {}});
  }

  test_support::Dice dice_;
  Job job_;
  SettingOut out_;
  double most_;
  std::vector<Known> known_;
};

RC_GTEST_PROP(Deviations, AreTheErrorsThatReadingsWereMadeWith, ()) {
  const auto seed = *rc::gen::inRange<unsigned>(0, 100000);
  Surveyor surveyor(test_support::seededJob(seed), seed, 40);
  const std::vector<Known> known = surveyor.survey();
  const AsBuilt built = deriveAsBuilt(surveyor.job(), surveyor.out());
  RC_ASSERT(built.unheld.empty());
  RC_ASSERT(built.deviations.size() == known.size());
  for (size_t i = 0; i < known.size(); ++i) {
    const Deviation& d = built.deviations[i];
    RC_ASSERT(std::abs(d.off - known[i].error) < 1e-9);
    if (d.kind != ReadingKind::Corner) continue;
    for (const CornerShift& shift : d.shifts) {
      const WallLine& wall = surveyor.out().walls[shift.wall];
      RC_ASSERT(glm::length(wall.along * shift.along + wall.outward * shift.outward -
                            known[i].shift) < 1e-9);
    }
  }
}

RC_GTEST_PROP(Deviations, OfWhatIsBuiltAsDrawnAreAllWithinAndChangeNothing, ()) {
  const auto seed = *rc::gen::inRange<unsigned>(0, 100000);
  Surveyor surveyor(test_support::seededJob(seed), seed, 0);
  surveyor.survey();
  const AsBuilt built = deriveAsBuilt(surveyor.job(), surveyor.out());
  for (const Deviation& d : built.deviations) {
    RC_ASSERT(d.verdict == Verdict::Within);
    RC_ASSERT(d.words == "on");
  }
  for (const Change& change : built.changes) RC_FAIL(change.words);
}

RC_GTEST_PROP(Deviations, AreTheSameWhereverTheSiteLies, ()) {
  const auto seed = *rc::gen::inRange<unsigned>(0, 100000);
  Surveyor surveyor(test_support::seededJob(seed), seed, 30);
  surveyor.survey();
  Job job = surveyor.job();
  job.site.boundary = siteBoundary(job);
  Job moved = job;
  const double turn = *rc::gen::inRange(0, 360) * 0.0174;
  const auto move = [&](Vec2& p) {
    p = Vec2{p.x * std::cos(turn) - p.y * std::sin(turn),
             p.x * std::sin(turn) + p.y * std::cos(turn)} +
        Vec2{31.25, -17.5};
  };
  for (Vec2& p : moved.outline) move(p);
  for (Vec2& p : moved.site.boundary) move(p);
  if (moved.cellar)
    for (Vec2& p : moved.cellar->outline) move(p);
  for (StandingBuilding& building : moved.site.buildings)
    for (Vec2& p : building.outline) move(p);
  for (SpotLevel& spot : moved.site.spots) move(spot.at);
  for (Reading& reading : moved.readings[0].rows)
    if (reading.position) move(*reading.position);
  const AsBuilt here = derive(job), there = derive(moved);
  RC_ASSERT(here.deviations.size() == there.deviations.size());
  for (size_t i = 0; i < here.deviations.size(); ++i)
    RC_ASSERT(std::abs(here.deviations[i].off - there.deviations[i].off) < 1e-6);
  RC_ASSERT(here.beds.size() == there.beds.size());
  for (size_t i = 0; i < here.beds.size(); ++i)
    RC_ASSERT(std::abs(here.beds[i].bed - there.beds[i].bed) < 1e-6);
  RC_ASSERT(here.corners.size() == there.corners.size());
  for (size_t i = 0; i < here.corners.size(); ++i)
    RC_ASSERT(std::abs(here.corners[i].over - there.corners[i].over) < 1e-6);
}

TEST(Deviations, AreSaidWithWhatIsAllowed) {
  Job job = rectangle(8, 6);
  job.foundations.top = -0.975;
  addSet(job, {levelAt("top-of-concrete", "C", -0.987), levelAt("top-of-concrete", "A", -0.991),
               levelAt("top-of-concrete", "B", -0.974), faceAt("outer-face", "A-B", 2, 0.009),
               tapeOf(ReadingKind::Diagonal, "A-C", 10.014)});
  const auto built = derive(job);
  ASSERT_EQ(built.deviations.size(), 5u);
  EXPECT_EQ(built.deviations[0].what, "top of concrete, corner C");
  EXPECT_EQ(built.deviations[0].words, "12 low, 15 allowed: at the edge");
  EXPECT_EQ(markOf(built.deviations[0]), "◆ at the edge");
  EXPECT_EQ(built.deviations[1].words, "16 low, 15 allowed: out");
  EXPECT_EQ(markOf(built.deviations[1]), "▼ out");
  EXPECT_EQ(built.deviations[2].words, "1 high, 15 allowed: within");
  EXPECT_EQ(built.deviations[3].words, "9 out, 10 allowed: at the edge");
  EXPECT_EQ(built.deviations[4].words, "14 long, 10 allowed: out");
  EXPECT_EQ(markOf(built.deviations[4]), "▲ out");
}

TEST(Deviations, GoByTheJobsOwnToleranceAndSayWhose) {
  Job job = rectangle(8, 6);
  job.foundations.top = -0.975;
  job.tolerances = {{"top-of-concrete", 0.005, 0.010, "Specification, clause 7"}};
  addSet(job, {levelAt("top-of-concrete", "C", -0.987), levelAt("top-of-concrete", "A", -0.969),
               levelAt("damp-course", "A", 0.007)});
  const auto built = derive(job);
  EXPECT_EQ(built.deviations[0].verdict, Verdict::Out);
  EXPECT_EQ(built.deviations[1].verdict, Verdict::Out);
  EXPECT_EQ(built.deviations[1].words, "6 high, 5 allowed: out");
  EXPECT_EQ(built.deviations[0].allowed.source, "the job's own: Specification, clause 7");
  EXPECT_EQ(built.deviations[2].allowed.source, "NHBC Standards 2011, 1.2, level of bed joints");
}

// Source: NHBC-1.2: bed joints within 8 mm in a wall of 5 m, pro rata below, 12 mm in a longer one.
TEST(Tolerances, OfBedJointsGoByTheWallsLength) {
  const Job job;
  const auto allowed = [&](double length) { return allowedFor(job, "sill", length).over * 1000; };
  EXPECT_NEAR(allowed(5), 8, 1e-9);
  EXPECT_NEAR(allowed(2.5), 4, 1e-9);
  EXPECT_NEAR(allowed(5.001), 12, 1e-9);
  EXPECT_NEAR(allowed(12), 12, 1e-9);
  EXPECT_NEAR(allowedFor(job, "side", 20).under * 1000, 10, 1e-9);  // 5 in 10 m
}

TEST(Tolerances, AreThereForEveryTargetAndSayTheirSource) {
  for (const ReadingTarget& target : readingTargets()) {
    const Allowed allowed = allowedFor(Job{}, target.name, 6);
    EXPECT_GE(allowed.over, 0) << target.name;
    EXPECT_GT(allowed.under, 0) << target.name;
    EXPECT_FALSE(allowed.source.empty()) << target.name;
  }
  // Soft fill under a strip is never right: a formation is not left high.
  EXPECT_EQ(allowedFor(Job{}, "formation", 6).over, 0);
}

TEST(Deviations, OfTheLatestSetCountAndEarlierOnesStay) {
  Job job = rectangle(8, 6);
  job.foundations.top = -0.975;
  addSet(job, {levelAt("top-of-concrete", "C", -1.000)}, "2027-05-20");
  addSet(job,
         {levelAt("top-of-concrete", "C", -0.977), levelAt("top-of-concrete", "B-A", -0.970, 2)},
         "2027-05-19");
  addSet(job, {levelAt("top-of-concrete", "A-B", -0.976, 6)});  // no date: follows the one before
  const auto built = derive(job);
  ASSERT_EQ(built.deviations.size(), 4u);
  EXPECT_TRUE(built.deviations[0].latest);
  EXPECT_FALSE(built.deviations[1].latest);
  EXPECT_FALSE(built.deviations[2].latest);  // the same point, from the other end
  EXPECT_TRUE(built.deviations[3].latest);
  EXPECT_EQ(built.beds.size(), 2u);
}

TEST(Deviations, FollowTheStepsOfTheFoundation) {
  const Job job = test_support::demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  Job read = job;
  read.readings.clear();
  addSet(read,
         {levelAt("top-of-concrete", "F-A", -0.975, 3), levelAt("top-of-concrete", "F-A", -1.2, 8),
          levelAt("top-of-concrete", "A", -1.2), levelAt("top-of-concrete", "pin 1", 0)});
  const auto built = deriveAsBuilt(read, out);
  ASSERT_EQ(built.deviations.size(), 4u);
  for (size_t i = 0; i < 3; ++i) EXPECT_NEAR(built.deviations[i].off, 0, 1e-9) << i;
  EXPECT_NEAR(built.deviations[3].design, out.foundations[0].top, 1e-9);
}

TEST(Deviations, AreNotMadeUpForWhatTheDrawingDoesNotHave) {
  Job job = rectangle(8, 6);
  addSet(job,
         {levelAt("cellar-floor", "A", -2), levelAt("top-of-concrete", "pin 999", -1),
          levelAt("structural-floor", "pin Z9", -1), levelAt("cellar-slab-top", "pin K-A1", -1),
          levelAt("sill", "A", 1), levelAt("ceiling", "A", 2.4)});
  Reading staff = levelAt("damp-course", "A", 1.5);
  staff.kind = ReadingKind::Staff;
  staff.setUp = "nowhere";
  job.readings[0].rows.push_back(staff);
  const auto built = derive(job);
  EXPECT_TRUE(built.deviations.empty());
  ASSERT_EQ(built.unheld.size(), 7u);
  EXPECT_EQ(built.unheld[0].why, "the drawing has no cellar finished floor");
  EXPECT_TRUE(says(built.unheld[1].why, "the level pins are 1 to "));
  EXPECT_TRUE(says(built.unheld[2].why, "the level pins over the ground slab are A1 to "));
  EXPECT_EQ(built.unheld[3].why, "this job has no level pins over the cellar slab");
  EXPECT_TRUE(says(built.unheld[4].why, "held against an opening"));
  EXPECT_EQ(built.unheld[5].why, "the drawing has no ceiling");
  EXPECT_TRUE(says(built.unheld[6].why, "no set-up \"nowhere\""));
}

// Slabs read at their pins with known errors give those errors back, over the whole of the grid.
TEST(Deviations, OfPinsOverSlabsAreTheErrorsThatWerePutIn) {
  Job job = test_support::demoJob("orchard-house");
  job.readings.clear();
  const SettingOut out = deriveSettingOut(job);
  std::vector<Reading> rows;
  std::vector<LevelPin> read;
  const auto error = [](const LevelPin& pin) {
    return std::round(2 * pin.at.x - 3 * pin.at.y) / 1000;
  };
  for (const LevelPin& pin : slabPins(job, out)) {
    const bool cellar = pin.concrete == PinnedConcrete::CellarSlab;
    rows.push_back(levelAt(cellar ? "cellar-slab-top" : "structural-floor", "pin " + pin.name,
                           pin.top + error(pin)));
    read.push_back(pin);
  }
  addSet(job, rows);
  const auto built = deriveAsBuilt(job, out);
  EXPECT_TRUE(built.unheld.empty());
  ASSERT_EQ(built.deviations.size(), read.size());
  ASSERT_GT(read.size(), 16u);
  for (size_t i = 0; i < read.size(); ++i) {
    EXPECT_NEAR(built.deviations[i].off, error(read[i]), 1e-9) << read[i].name;
    EXPECT_EQ(built.deviations[i].place.at, read[i].at) << read[i].name;
  }
  const LevelSurface slab = levelSurface(built.deviations, "structural-floor:0");
  ASSERT_FALSE(slab.triangles.empty());
  for (const LevelPin& pin : read)
    if (pin.concrete == PinnedConcrete::GroundSlab) {
      EXPECT_NEAR(slab.at(pin.at).value_or(1), error(pin), 1e-9) << pin.name;
    }
}

TEST(Deviations, OfEveryReadingOfTheHouseAreKnown) {
  const auto built = derive(test_support::demoJob("orchard-house"));
  for (const Unheld& unheld : built.unheld) ADD_FAILURE() << unheld.why;
  EXPECT_GT(built.deviations.size(), 40u);
  EXPECT_FALSE(built.changes.empty());
}

}  // namespace
}  // namespace asbuilt_test
