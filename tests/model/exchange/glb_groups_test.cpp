#include "model/exchange/glb_groups.h"

#include <gtest/gtest.h>

#include "tests/model/exchange/glb_sample.h"

namespace model {
namespace {

using testing::sampleModel;

// What a key list shows at a moment, read as steps and read as straight lines between keys.
double stepAt(const std::vector<GlbKey>& keys, double seconds) {
  double scale = keys.front().scale;
  for (const GlbKey& key : keys) {
    if (key.seconds <= seconds) scale = key.scale;
  }
  return scale;
}

double linearAt(const std::vector<GlbKey>& keys, double seconds) {
  for (size_t i = 1; i < keys.size(); ++i) {
    if (seconds > keys[i].seconds) continue;
    const double f = (seconds - keys[i - 1].seconds) / (keys[i].seconds - keys[i - 1].seconds);
    return keys[i - 1].scale + f * (keys[i].scale - keys[i - 1].scale);
  }
  return keys.back().scale;
}

TEST(GlbGroups, PutWhatComesAndGoesTogetherIntoOneGroup) {
  const Model m = sampleModel();
  const auto groups = groupWorks(m.programme, m.works);
  ASSERT_EQ(groups.size(), 5u);
  EXPECT_EQ(groups[0].placed, kBeforeWork);
  EXPECT_EQ(groups[0].removed, 0);
  EXPECT_EQ(groups[0].elements, std::vector<size_t>{1});  // the spoil
  EXPECT_TRUE(groups[1].staysToTheEnd());
  EXPECT_EQ(groups[1].elements, std::vector<size_t>{0});  // the ground
  EXPECT_EQ(groups[2].elements, std::vector<size_t>{2});  // the prop
  EXPECT_EQ(groups[3].strings, std::vector<size_t>{0});
  EXPECT_EQ(groups[4].elements, std::vector<size_t>{3});
}

TEST(GlbGroups, KeepWhatIsRemovedByAStageThatIsNotThere) {
  Model m = sampleModel();
  m.works.elements[3].removed = whole({StageKind::StrikeScaffold, 0, 0});
  for (const GlbGroup& group : groupWorks(m.programme, m.works)) {
    if (group.placed == 1) {
      EXPECT_TRUE(group.staysToTheEnd());
    }
  }
}

TEST(GlbGroups, ShowExactlyWhatStandsAtTheEndOfEachStage) {
  const Model m = sampleModel();
  const GlbClock clock{1.5, m.programme.stages.size()};
  for (int moment = 0; moment <= int(m.programme.stages.size()); ++moment) {
    const double middle = clock.startOf(moment - 1) + clock.secondsPerStage / 2;
    std::vector<size_t> shown;
    for (const GlbGroup& group : groupWorks(m.programme, m.works)) {
      const auto keys = keysOf(group, clock);
      const double scale = keys.empty() ? 1 : stepAt(keys, middle);
      if (!keys.empty()) {
        EXPECT_EQ(scale, linearAt(keys, middle));
      }
      if (scale == 1) shown.insert(shown.end(), group.elements.begin(), group.elements.end());
    }
    std::sort(shown.begin(), shown.end());
    EXPECT_EQ(shown, standingAt(m.programme, m.works, moment)) << "after stage " << moment;
  }
}

TEST(GlbGroups, KeysRiseFromZeroToOneCommonEnd) {
  const GlbClock clock{0.5, 3};
  for (const auto& [placed, removed] :
       {std::pair{kBeforeWork, 0}, std::pair{0, kStays}, std::pair{0, 1}, std::pair{2, kStays},
        std::pair{1, 1}, std::pair{kBeforeWork, 2}}) {
    const auto keys = keysOf({placed, removed, {}, {}}, clock);
    EXPECT_EQ(keys.front().seconds, 0);
    EXPECT_EQ(keys.back().seconds, clock.end());
    for (size_t i = 1; i < keys.size(); ++i) EXPECT_GT(keys[i].seconds, keys[i - 1].seconds);
  }
}

TEST(GlbGroups, NeverShowWhatOneStageBothPlacesAndRemoves) {
  for (const GlbKey& key : keysOf({1, 1, {}, {}}, {1.5, 3})) EXPECT_EQ(key.scale, 0);
}

TEST(GlbGroups, NameTheStageAsPeopleDo) {
  const Model m = sampleModel();
  EXPECT_EQ(nameOf(GlbGroup{0, kStays, {}, {}}, m.programme), "Stage 1 - Dig the trenches");
  EXPECT_EQ(nameOf(GlbGroup{0, 1, {}, {}}, m.programme),
            "Stage 1 - Dig the trenches (until stage 2)");
  EXPECT_EQ(nameOf(GlbGroup{kBeforeWork, 0, {}, {}}, m.programme),
            "Before work starts (until stage 1)");
}

}  // namespace
}  // namespace model
