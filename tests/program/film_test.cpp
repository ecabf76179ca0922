// Films by the real program, taken apart by an outside reader.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/program/outside_reader.h"
#include "tests/program/program_fixture.h"
#include "tests/support/png_reader.h"

namespace program_test {
namespace {

namespace fs = std::filesystem;
using test_support::Picture;
using test_support::readPng;

class Films : public InFolder {
 protected:
  // Of the smallest job, small unless the options say otherwise.
  ProgramRun film(const std::string& out, const std::vector<std::string>& options) {
    std::vector<std::string> call{"film", demoPath("smallest"), "--out", out};
    if (std::find(options.begin(), options.end(), "--size") == options.end())
      call.insert(call.end(), {"--size", "160x120"});
    call.insert(call.end(), options.begin(), options.end());
    return stringcourse(call);
  }
  static nlohmann::json probe(const std::string& path) {
    return nlohmann::json::parse(output({"ffprobe", "-v", "error", "-count_frames", "-show_streams",
                                         "-show_format", "-of", "json", path}));
  }
  // Its frames, decoded.
  std::vector<Picture> frames(const std::string& path) {
    fs::create_directories(inFolder("decoded"));
    output({"ffmpeg", "-v", "error", "-i", path, inFolder("decoded/%04d.png")});
    std::vector<Picture> pictures;
    for (const std::string& name : namesIn(inFolder("decoded")))
      pictures.push_back(readPng(inFolder("decoded/" + name)));
    return pictures;
  }
};

// Pixels that differ by more than encoding makes them differ.
int changed(const Picture& a, const Picture& b) {
  constexpr int kEncoding = 40;
  int count = 0;
  for (size_t i = 0; i + 3 < a.rgba.size() && i + 3 < b.rgba.size(); i += 4) {
    int apart = 0;
    for (size_t c = 0; c < 3; ++c) apart += std::abs(int(a.rgba[i + c]) - int(b.rgba[i + c]));
    count += apart > kEncoding;
  }
  return count;
}

TEST_F(Films, AFilmIsWhatPhonesPlayAsLongAndAsLargeAsAsked) {
  const ProgramRun run = film(inFolder("a.mp4"), {"--length", "3", "--fps", "10"});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  EXPECT_EQ(left(), (std::vector<std::string>{"a.mp4"}));
  EXPECT_NE(run.err.find("[30/30]"), std::string::npos) << run.err;
  const auto seen = probe(inFolder("a.mp4"));
  ASSERT_EQ(seen["streams"].size(), 1u);
  const auto& stream = seen["streams"][0];
  EXPECT_EQ(stream["codec_name"], "h264");
  EXPECT_EQ(stream["pix_fmt"], "yuv420p");
  EXPECT_EQ(stream["color_space"], "bt709");
  EXPECT_EQ(stream["width"], 160);
  EXPECT_EQ(stream["height"], 120);
  EXPECT_EQ(stream["r_frame_rate"], "10/1");
  EXPECT_EQ(stream["nb_read_frames"], "30");
  EXPECT_NEAR(std::stod(std::string(seen["format"]["duration"])), 3, 1e-3);
  const std::string bytes = contents(inFolder("a.mp4"));
  EXPECT_LT(bytes.find("moov"), bytes.find("mdat")) << "plays before it is all there";
}

TEST_F(Films, HaveAKeyframeAtEverySecondAtLeast) {
  ASSERT_EQ(film(inFolder("a.mp4"), {"--length", "4", "--fps", "8", "--view", "plan"}).exitCode, 0);
  std::istringstream times(
      output({"ffprobe", "-v", "error", "-skip_frame", "nokey", "-show_entries", "frame=pts_time",
              "-of", "csv=p=0", inFolder("a.mp4")}));
  double before = -1;
  int count = 0;
  for (double at = 0; times >> at; before = at, ++count) {
    if (before >= 0) {
      EXPECT_LE(at - before, 1.001);
    } else {
      EXPECT_EQ(at, 0);
    }
    times.ignore(10, '\n');
  }
  EXPECT_GE(count, 4);
}

TEST_F(Films, WallsRiseFrameByFrameAndTheEndRests) {
  const ProgramRun run =
      film(inFolder("walls.mp4"),
           {"--from", "run-in-ground-1", "--to", "run-in-ground-1", "--view", "south-west",
            "--show", "none", "--length", "3", "--fps", "5", "--size", "320x240"});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  const auto seen = frames(inFolder("walls.mp4"));
  ASSERT_EQ(seen.size(), 15u);
  EXPECT_GT(changed(seen.front(), seen.back()), 500);
  const int rest = changed(seen[13], seen[14]);
  EXPECT_LT(rest, 15) << "the last tenth: what encoding does to it";
  EXPECT_GT(changed(seen[6], seen[7]), 40 + rest);
  EXPECT_GT(changed(seen[7], seen[8]), 40 + rest);
}

TEST_F(Films, GoThroughTheWholeProgrammeWithItsCaptions) {
  ASSERT_EQ(film(inFolder("a.mp4"), {"--length", "4", "--fps", "5", "--size", "320x240"}).exitCode,
            0);
  const auto seen = frames(inFolder("a.mp4"));
  ASSERT_EQ(seen.size(), 20u);
  EXPECT_GT(changed(seen.front(), seen.back()), 2000);
  for (size_t i = 1; i + 1 < seen.size(); ++i)
    EXPECT_GT(changed(seen.front(), seen[i]), 50) << "frame " << i;
}

TEST_F(Films, TheSameCallGivesTheSameFilm) {
  for (const char* name : {"a.mp4", "b.mp4"})
    ASSERT_EQ(film(inFolder(name), {"--length", "1", "--fps", "8"}).exitCode, 0);
  EXPECT_TRUE(contents(inFolder("a.mp4")) == contents(inFolder("b.mp4")));
}

TEST_F(Films, FramesAreThePicturesOfTheFilm) {
  const ProgramRun run = film(inFolder("frames/"), {"--length", "1", "--fps", "6", "--view",
                                                    "south-east", "--show", "none"});
  ASSERT_EQ(run.exitCode, 0) << run.err;
  const auto names = namesIn(inFolder("frames"));
  ASSERT_EQ(names.size(), 6u);
  EXPECT_EQ(names.front(), "frame-00001.png");
  EXPECT_EQ(names.back(), "frame-00006.png");
  ASSERT_EQ(stringcourse({"picture", demoPath("smallest"), "--view", "south-east", "--size",
                          "160x120", "--out", inFolder("end.png")})
                .exitCode,
            0);
  const Picture last = readPng(inFolder("frames/frame-00006.png"));
  EXPECT_EQ(test_support::difference(last, readPng(inFolder("end.png"))).pixels, 0);
  EXPECT_EQ(film(inFolder("frames/"), {"--length", "1"}).exitCode, 1) << "they are left alone";
  EXPECT_EQ(namesIn(inFolder("frames")), names);
}

TEST_F(Films, WithoutFFmpegTheFramesAreWrittenInstead) {
  // The program alone, without the module that lies beside it.
  fs::create_directories(inFolder("alone"));
  const std::string alone = inFolder("alone/stringcourse");
  fs::copy_file(test_support::buildFolder() + "/stringcourse", alone);
  const ProgramRun run =
      test_support::runProgram({alone, "film", demoPath("smallest"), "--size", "160x120",
                                "--length", "1", "--fps", "3", "--out", inFolder("house.mp4")});
  EXPECT_EQ(run.exitCode, 0) << run.err;
  EXPECT_NE(run.err.find("no MP4 can be written"), std::string::npos) << run.err;
  EXPECT_NE(run.err.find("house-frames"), std::string::npos) << run.err;
  EXPECT_FALSE(fs::exists(inFolder("house.mp4")));
  EXPECT_EQ(namesIn(inFolder("house-frames")).size(), 3u);
}

TEST_F(Films, StoppingLeavesNothingAndAnEarlierFilmAsItWas) {
  writeFile("a.mp4", "an earlier film");
  for (const char* out : {"a.mp4", "frames/"}) {
    ProgramSettings settings;
    settings.interruptWhen = [&] { return left().size() > 1; };
    const ProgramRun run = stringcourse({"film", demoPath("smallest"), "--length", "600", "--size",
                                         "160x120", "--out", inFolder(out)},
                                        settings);
    EXPECT_EQ(run.exitCode, 130) << run.err;
    EXPECT_NE(run.err.find("Stopped"), std::string::npos) << run.err;
    EXPECT_EQ(left(), (std::vector<std::string>{"a.mp4"})) << out;
  }
  EXPECT_EQ(contents(inFolder("a.mp4")), "an earlier film");
}

TEST_F(Films, WrongOptionsAreToldWithWhatWouldBeRight) {
  struct Wrong {
    std::vector<std::string> options;
    std::string out, told;
  };
  const std::vector<Wrong> wrongs{
      {{"--size", "161x120"}, "a.mp4", "even numbers; take 160x120"},
      {{"--size", "big"}, "a.mp4", "--size \"big\""},
      {{}, "a.avi", "a.mp4"},
      {{}, "a.avi", "with / at its end"},
      {{"--fps", "0"}, "a.mp4", "--fps"},
      {{"--length", "0.5"}, "a.mp4", "--length"},
      {{"--length", "10", "--day", "1"}, "a.mp4", "--length"},
      {{"--day", "61"}, "a.mp4", "--day"},
      {{"--from", "roof-covering-none"}, "a.mp4", "there is no one stage"},
      {{"--from", "4", "--to", "3"}, "a.mp4", "comes after"},
      {{"--view", "moon"}, "a.mp4", "there is no view"},
      {{"--show", "ghosts"}, "a.mp4", "--show knows no"},
  };
  for (const Wrong& wrong : wrongs) {
    const ProgramRun run = film(inFolder(wrong.out), wrong.options);
    EXPECT_EQ(run.exitCode, 2) << wrong.told;
    EXPECT_NE(run.err.find(wrong.told), std::string::npos) << run.err;
  }
  const ProgramRun hours =
      stringcourse({"film", demoPath("orchard-house"), "--day", "60", "--out", inFolder("a.mp4")});
  EXPECT_EQ(hours.exitCode, 2);
  EXPECT_NE(hours.err.find("make --day smaller"), std::string::npos) << hours.err;
  EXPECT_TRUE(left().empty());
  EXPECT_EQ(film(inFolder("none/a.mp4"), {"--length", "1"}).exitCode, 1) << "no such folder";
}

TEST_F(Films, NeedOpenGl) {
  ProgramSettings none;
  none.environment = {{"__EGL_VENDOR_LIBRARY_FILENAMES", "/nonexistent.json"}};
  const ProgramRun run =
      stringcourse({"film", demoPath("smallest"), "--out", inFolder("a.mp4")}, none);
  EXPECT_EQ(run.exitCode, 3);
  EXPECT_TRUE(left().empty());
}

}  // namespace
}  // namespace program_test
