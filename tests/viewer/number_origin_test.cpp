// The card says of each number whether the job file gives it, and where.
#include "viewer/number_origin.h"

#include <gtest/gtest.h>

#include "viewer/panels/thing_card.h"

namespace viewer {
namespace {

constexpr const char* kJob = R"([outline]
corners = [[0, 0], [9000, 0], [9000, 7000], [0, 7000]]
[foundations]
width = 550
top = -0.900
[[foundations.step]]
wall = "C-D"
top = -1.200
[ground_floor]
slab = 125
[[opening]]
name = "Hall window"
wall = "A-B"
from = "A"
at = 1000
width = 1210
head = 2.025
[roof]
plate_width = 120
)";

class NumberOrigin : public testing::Test {
 protected:
  NumberOrigin() : read_(model::readJob(kJob, "job")), model_(model::buildModel(*read_.job)) {}
  const model::Element& thing(model::ElementKind kind, const std::string& wall = "") const {
    for (const auto& element : model_.works.elements)
      if (element.kind == kind && (wall.empty() || element.wall == wall)) return element;
    throw std::runtime_error("no such thing");
  }
  std::string origin(const model::Element& element, Figure figure) const {
    return originWords(model_, read_.places, element, figure);
  }
  model::ReadResult read_;
  model::Model model_;
};

using enum model::ElementKind;

TEST_F(NumberOrigin, NamesKeyAndLineOfWhatTheFileGives) {
  EXPECT_EQ(origin(thing(Foundation, "A-B"), Figure::Top), "foundations.top, line 5");
  EXPECT_EQ(origin(thing(Foundation, "C-D"), Figure::Top), "foundations.step.top, line 8");
  EXPECT_EQ(origin(thing(Window), Figure::Top), "opening.head, line 17");
  EXPECT_EQ(origin(thing(Lintel), Figure::Underside), "opening.head, line 17");
  EXPECT_EQ(origin(thing(GroundSlab), Figure::Size), "ground_floor.slab 125, line 10");
}

TEST_F(NumberOrigin, SaysWhatIsADefaultAndWhatIsWorkedOut) {
  EXPECT_EQ(origin(thing(Screed), Figure::Top), "storey.floor, by default");
  EXPECT_EQ(origin(thing(OuterLeaf), Figure::Size), "walls.outer_leaf 102.5, by default");
  EXPECT_EQ(origin(thing(Window), Figure::Underside), "worked out; opening.sill is not given");
  EXPECT_EQ(origin(thing(DampCourse), Figure::Top), "worked out; walls.damp_course is not given");
  EXPECT_EQ(origin(thing(Foundation, "A-B"), Figure::Underside), "worked out");
  EXPECT_EQ(origin(thing(RoofCovering), Figure::Top), "worked out");
  EXPECT_EQ(origin(thing(WallPlate), Figure::Size),
            "roof.plate_width 120, line 19; roof.plate_depth 50, by default");
}

// Whatever the card claims of a level: changing that key by 75 mm moves the level by as much.
TEST_F(NumberOrigin, IsTrueOfEveryLevelThatItClaims) {
  int claims = 0;
  for (const model::Element& element : model_.works.elements) {
    if (origin(element, Figure::Top) != "foundations.top, line 5") continue;
    model::Job job = model_.job;
    job.foundations.top = -0.975;
    const model::Model lower = model::buildModel(job);
    for (const auto& other : lower.works.elements)
      if (other.id == element.id) {
        EXPECT_NEAR(other.top, element.top - 0.075, 1e-9) << element.id;
        ++claims;
      }
  }
  EXPECT_GT(claims, 2);
}

TEST_F(NumberOrigin, StandsOnTheCardUnderItsNumber) {
  const ReadyJob job(model_, read_.places);
  for (size_t i = 0; i < model_.works.elements.size(); ++i) {
    if (model_.works.elements[i].kind != Foundation || model_.works.elements[i].wall != "A-B")
      continue;
    const auto lines = thingLines(job, i);
    ASSERT_GT(lines.size(), 6u);
    EXPECT_EQ(lines[0].ink, CardInk::Name);
    EXPECT_EQ(lines[2].words.rfind("Top -0.900", 0), 0u);
    EXPECT_EQ(lines[3].words, "foundations.top, line 5");
    EXPECT_EQ(lines[3].ink, CardInk::Quiet);
  }
}

}  // namespace
}  // namespace viewer
