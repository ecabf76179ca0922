// The program in a window of a virtual screen, and the eyes with which the tests look at it.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <memory>
#include <stdexcept>
#include <utility>

#include "tests/program/virtual_screen.h"
#include "tests/support/folders.h"

namespace window_test {

using screen::eventually;
using screen::Shot;
using screen::VirtualScreen;

inline constexpr int kWidth = 1280, kHeight = 720;
// The tape's two yellows, before and behind the hook, and the blue of levels.
inline constexpr unsigned kTape = 0xf2d05a, kTapeDone = 0xe3b93a, kCard = 0xfdfbf5,
                          kLevels = 0x0072b2;
inline constexpr int kTapeLeft = 42, kTapeRight = 758, kTapeRow = 692;

inline std::string demo(const std::string& name) {
  return test_support::sourceFolder() + "/assets/jobs/" + name;
}

inline std::string read(const std::string& path) {
  std::ifstream in(path);
  return {(std::istreambuf_iterator<char>(in)), {}};
}

inline bool showsTape(const Shot& shot) {
  return shot.count(kTape, kTapeLeft, kTapeRow, kTapeRight, kTapeRow + 4) +
             shot.count(kTapeDone, kTapeLeft, kTapeRow, kTapeRight, kTapeRow + 4) >
         2000;
}

// The hook stands where the tape changes from the one yellow to the other.
inline double hook(const Shot& shot) {
  int done = 0, both = 0;
  for (int x = kTapeLeft; x < kTapeRight; ++x) {
    done += shot.at(x, kTapeRow) == kTapeDone;
    both += shot.at(x, kTapeRow) == kTapeDone || shot.at(x, kTapeRow) == kTape;
  }
  return both ? double(done) / both : -1;
}

// The first and the last pixel of the tape.
inline std::pair<int, int> tapeEnds(const Shot& shot) {
  int left = shot.width, right = 0;
  for (int x = 0; x < shot.width; ++x) {
    if (shot.at(x, kTapeRow) != kTape && shot.at(x, kTapeRow) != kTapeDone) continue;
    left = std::min(left, x);
    right = std::max(right, x);
  }
  return {left, right};
}

// A part of the sheet, in pixels; the right and bottom edges are not in it.
struct Area {
  int left = 0, top = 0, right = 0, bottom = 0;

  double middleX() const { return (left + right) / 2.0; }
  double middleY() const { return (top + bottom) / 2.0; }
  int width() const { return right - left; }
  int height() const { return bottom - top; }
};

// Clear of captions, tabs, tape, rod and title block: what is here is the building or lies over it.
inline constexpr Area kDrawing{46, 150, 1104, 550};

// Dark enough to be lettering or an ink line.
inline bool isInk(unsigned p) { return (p >> 16) < 100 && (p >> 8 & 255) < 100 && (p & 255) < 100; }

// The box round the pixels of an area of which the claim holds; empty when it holds of none.
template <typename Claim>
Area areaWhere(const Claim& claim, const Area& within = kDrawing) {
  Area found{within.right, within.bottom, within.left, within.top};
  for (int y = within.top; y < within.bottom; ++y)
    for (int x = within.left; x < within.right; ++x) {
      if (!claim(x, y)) continue;
      found = {std::min(found.left, x), std::min(found.top, y), std::max(found.right, x + 1),
               std::max(found.bottom, y + 1)};
    }
  return found.right > found.left ? found : Area{};
}

template <typename Claim>
int countWhere(const Claim& claim, const Area& within = kDrawing) {
  int count = 0;
  for (int y = within.top; y < within.bottom; ++y)
    for (int x = within.left; x < within.right; ++x) count += claim(x, y);
  return count;
}

class WindowTest : public ::testing::Test {
 protected:
  void SetUp() override {
    for (const char* needed : {"Xvfb", "xdotool", "import"})
      if (!screen::installed(needed)) GTEST_SKIP() << needed << " is not installed";
    screen_ = std::make_unique<VirtualScreen>(kWidth, kHeight);
    ASSERT_TRUE(screen_->works());
    folder_ = std::filesystem::temp_directory_path() /
              ("stringcourse_window_" + std::to_string(getpid()));
    std::filesystem::create_directories(folder_);
    job_ = (folder_ / "house.toml").string();
  }
  void TearDown() override {
    screen_.reset();
    std::filesystem::remove_all(folder_);
  }

  void write(const std::string& text) {
    const std::string temporary = job_ + ".new";
    std::ofstream(temporary) << text;
    std::filesystem::rename(temporary, job_);
  }
  // The demo jobs name them beside themselves.
  void copyReadings() {
    for (const auto& entry : std::filesystem::directory_iterator(demo(""))) {
      if (entry.path().extension() == ".csv")
        std::filesystem::copy_file(entry.path(), folder_ / entry.path().filename());
    }
  }
  void openCopyOf(const std::string& name) {
    copyReadings();
    write(read(demo(name)));
    openJob(job_);
  }
  void openJob(const std::string& path) {
    screen_->open(test_support::buildFolder() + "/stringcourse", path);
    if (!eventually([&] { return !screen_->title().empty() || !screen_->running(); }) ||
        !screen_->running())
      throw std::runtime_error("the window did not open");
  }
  void waitForTape() {
    if (!eventually([&] { return showsTape(screen_->shot()); }))
      throw std::runtime_error("the tape was never drawn");
    settle();
  }
  // Several looks running the same: on a busy machine a frame may take its time.
  Shot settle() {
    Shot last = screen_->shot();
    int same = 0;
    eventually([&] {
      Shot now = screen_->shot();
      same = now.rgb == last.rgb ? same + 1 : 0;
      last = std::move(now);
      return same >= 3;
    });
    return last;
  }
  // Clicks a row of the title block and waits until its field takes the keyboard.
  void openField(int x, int y) {
    screen_->hand("mousemove " + std::to_string(x) + " " + std::to_string(y));
    const Shot before = settle();
    screen_->hand("click 1");
    eventually(
        [&] { return before.differences(screen_->shot(), 740, y - 14, 1110, y + 14) > 100; });
    settle();
  }
  // Presses one key so many times.
  void press(const std::string& key, int times = 1) {
    for (int i = 0; i < times; ++i) screen_->hand("key " + key);
  }
  // Of a card over the drawing, wherever it has found room.
  int cardPixels(const Shot& shot) { return shot.count(kCard, 42, 116, 1100, 552); }
  int drawingDiffers(const Shot& a, const Shot& b) { return a.differences(b, 60, 200, 770, 600); }

  std::unique_ptr<VirtualScreen> screen_;
  std::filesystem::path folder_;
  std::string job_;
};

}  // namespace window_test
