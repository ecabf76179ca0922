// The chart of dates under a hand: bars are pulled, and the job file follows.
#include "model/job/read_job.h"
#include "tests/program/window_fixture.h"

namespace window_test {
namespace {

class WindowDates : public WindowTest {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    if (IsSkipped() || HasFatalFailure()) return;
    openCopyOf("garage.toml");
    waitForTape();
    screen_->hand("mousemove 1000 60 key Home key y");
    settle();
  }
  // The yellow of bars on the chart, right of the names and under the heads of the days.
  static Area bar(const Shot& shot, int top, int bottom) {
    Area box{kWidth, kHeight, 0, 0};
    for (int y = top; y < bottom; ++y)
      for (int x = 345; x < 730; ++x) {
        if (shot.at(x, y) != kTape) continue;
        box = {std::min(box.left, x), std::min(box.top, y), std::max(box.right, x + 1),
               std::max(box.bottom, y + 1)};
      }
    return box;
  }
};

TEST_F(WindowDates, PullingABarsEndChangesItsDaysInTheFile) {
  const std::string before = read(job_);
  const Shot shot = settle();
  int top = 0;
  for (int y = 140; y < 500 && top == 0; ++y) {
    const Area one = bar(shot, y, y + 8);
    if (one.right > one.left && one.height() == 8) top = y;
  }
  ASSERT_GT(top, 0) << "no bar";
  const Area one = bar(shot, top, top + 8);
  const std::string y = std::to_string(int(one.middleY()));
  // As slow as a hand: one that is down and up between two frames has pulled nothing.
  const auto to = [&](int x) { return "mousemove " + std::to_string(x) + " " + y; };
  screen_->hand(to(one.right) + " sleep 0.4 mousedown 1 sleep 0.4 " + to(one.right + 40) +
                " sleep 0.4 " + to(one.right + 60) + " sleep 0.4 mouseup 1");
  ASSERT_TRUE(eventually([&] { return read(job_) != before; }));
  const auto job = model::readJobFile(job_).job;
  ASSERT_TRUE(job);
  ASSERT_FALSE(job->programme.stages.empty());
  EXPECT_TRUE(job->programme.stages.back().days);
  EXPECT_TRUE(eventually([&] {
    const Area now = bar(screen_->shot(), top, top + 8);
    return now.width() > one.width() + 10;
  })) << "the bar is longer";
}

// The arrow of a delivery is found as what the chart has more than without it.
class WindowDeliveries : public WindowTest {
 protected:
  static constexpr Area kChart{345, 140, 730, 500};

  void SetUp() override {
    WindowTest::SetUp();
    if (IsSkipped() || HasFatalFailure()) return;
    copyReadings();
    const std::string plain = read(demo("garage.toml")) + "\n[programme]\nstart = \"2027-03-01\"\n";
    write(plain);
    openJob(job_);
    waitForTape();
    screen_->hand("mousemove 1000 60 key Home key y");
    const Shot without = settle();
    write(plain +
          "\n[[programme.delivery]]\nwhat = \"Concrete\"\nstage = \"ground-slab\"\n"
          "days_before = 2\n");
    std::vector<std::pair<int, int>> pixels;
    ASSERT_TRUE(eventually([&] {
      pixels = arrow(without, screen_->shot());
      return pixels.size() > 10;
    })) << "no arrow";
    at_ = pixels[pixels.size() / 2];
    for (const auto& [x, y] : pixels)
      ASSERT_TRUE(std::abs(x - at_.first) < 8 && std::abs(y - at_.second) < 12)
          << x << " " << y << " is far from " << at_.first << " " << at_.second;
    settle();
  }
  // The pixels that became ink.
  static std::vector<std::pair<int, int>> arrow(const Shot& without, const Shot& with) {
    std::vector<std::pair<int, int>> pixels;
    for (int y = kChart.top; y < kChart.bottom; ++y)
      for (int x = kChart.left; x < kChart.right; ++x)
        if (without.at(x, y) != with.at(x, y) && isInk(with.at(x, y))) pixels.emplace_back(x, y);
    return pixels;
  }
  void pull(int by) {
    const auto to = [&](int x) {
      return "mousemove " + std::to_string(x) + " " + std::to_string(at_.second);
    };
    screen_->hand(to(at_.first) + " sleep 0.4 mousedown 1 sleep 0.4 " + to(at_.first + by / 2) +
                  " sleep 0.4 " + to(at_.first + by) + " sleep 0.4 mouseup 1");
  }

  std::pair<int, int> at_;  // within the arrow
};

TEST_F(WindowDeliveries, PulledToAnEarlierDayIsWrittenAndTakenBack) {
  const std::string before = read(job_);
  pull(-30);
  ASSERT_TRUE(eventually([&] { return read(job_) != before; }));
  const auto job = model::readJobFile(job_).job;
  ASSERT_TRUE(job);
  ASSERT_EQ(job->programme.deliveries.size(), 1u);
  EXPECT_GT(job->programme.deliveries[0].daysBefore, 2);
  EXPECT_TRUE(job->programme.stages.empty()) << "only the delivery";
  // "Take the change back", in the row over the chart.
  screen_->hand("mousemove 470 89");
  settle();
  screen_->hand("click 1");
  EXPECT_TRUE(eventually([&] { return read(job_) == before; }));
}

TEST_F(WindowDeliveries, PulledPastItsStageIsRefused) {
  const std::string before = read(job_);
  const Shot shown = settle();
  pull(90);
  ASSERT_TRUE(eventually([&] {
    return shown.differences(screen_->shot(), 46, 500, 740, 640) > 200;
  })) << "the reason";
  settle();
  EXPECT_EQ(read(job_), before);
}

}  // namespace
}  // namespace window_test
