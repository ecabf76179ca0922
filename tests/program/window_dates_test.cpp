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

}  // namespace
}  // namespace window_test
