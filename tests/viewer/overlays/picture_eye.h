// A finished picture of a job, with the means to look where a point of the site falls on it.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include <glm/common.hpp>
#include <glm/geometric.hpp>

#include "tests/viewer/overlays/overlay_fixture.h"
#include "viewer/gl/offscreen.h"

namespace viewer {

using Colour = bool (*)(unsigned rgb);

inline int red(unsigned rgb) { return int(rgb >> 16 & 255); }
inline int green(unsigned rgb) { return int(rgb >> 8 & 255); }
inline int blue(unsigned rgb) { return int(rgb & 255); }
// The sheet's colours, also where the soft edge of a line has taken half of the ground under it.
inline bool isString(unsigned p) {
  return red(p) > 170 && red(p) - blue(p) > 110 && red(p) - green(p) > 60;
}
inline bool isInk(unsigned p) { return red(p) < 120 && green(p) < 120 && blue(p) < 120; }
inline bool isPaper(unsigned p) { return red(p) > 230 && green(p) > 228 && blue(p) > 215; }
inline bool isLevel(unsigned p) { return blue(p) - red(p) > 120; }

inline float distanceTo(const glm::vec2& p, const glm::vec2& a, const glm::vec2& b) {
  const glm::vec2 way = b - a;
  const float length2 = std::max(1e-6f, glm::dot(way, way));
  const float t = glm::clamp(glm::dot(p - a, way) / length2, 0.0f, 1.0f);
  return glm::distance(p, a + way * t);
}

class PictureEye : public OverlayTest {
 public:
  static constexpr int kWidth = 1280, kHeight = 720;

  // 0xRRGGBB; white off the picture.
  unsigned at(int x, int y) const {
    if (x < 0 || y < 0 || x >= kWidth || y >= kHeight) return 0xffffff;
    const std::uint8_t* p = &image_.rgba[(size_t(y) * kWidth + size_t(x)) * 4];
    return unsigned(p[0]) << 16 | unsigned(p[1]) << 8 | p[2];
  }
  // Whether a pixel no further off than that, across and down, is of the colour.
  bool near(const glm::vec2& p, int reach, const Colour& is) const {
    const int x = int(std::floor(p.x)), y = int(std::floor(p.y));
    for (int dy = -reach; dy <= reach; ++dy)
      for (int dx = -reach; dx <= reach; ++dx)
        if (is(at(x + dx, y + dy))) return true;
    return false;
  }
  int count(const Colour& is) const {
    int found = 0;
    for (int y = 0; y < kHeight; ++y)
      for (int x = 0; x < kWidth; ++x) found += is(at(x, y));
    return found;
  }

 protected:
  void SetUp() override {
    OverlayTest::SetUp();
    std::string why;
    offscreen_ = Offscreen::create(why);
    ASSERT_TRUE(offscreen_) << why;
  }
  void TearDown() override {
    picturer_.reset();
    offscreen_.reset();
    OverlayTest::TearDown();
  }

  void openPictured(const std::string& demo) {
    picturer_.reset();  // it looks at the model
    open("assets/jobs/" + demo);
    picturer_ = std::make_unique<Picturer>(model_, *offscreen_);
  }
  // Takes the picture and writes down its words.
  void look(const std::string& view, double time) {
    PictureOptions how;
    how.width = kWidth;
    how.height = kHeight;
    how.view = view;
    how.time = time;
    how.overlays = overlays_;
    frame_ = frameOf(model_, scene_, how);
    words_ = texts(view, time, kWidth, kHeight);
    image_ = picturer_->picture(how);
  }
  // Where a point of the site falls.
  std::optional<glm::vec2> pixel(const model::Vec3& p) const {
    const auto seen = frame_.camera.project(scene_.local(p), double(kWidth) / kHeight);
    if (!seen) return std::nullopt;
    return glm::vec2(seen->x * kWidth, seen->y * kHeight);
  }
  std::vector<Box> wordsOf(const std::string& text) const {
    std::vector<Box> boxes;
    for (const DrawnText& each : words_)
      if (each.text == text) boxes.push_back(each.box);
    return boxes;
  }
  bool onWords(const glm::vec2& p) const {
    for (const DrawnText& each : words_)
      if (each.box.grown(3).contains(p)) return true;
    return false;
  }

  Frame frame_;
  Image image_;
  std::vector<DrawnText> words_;
  std::unique_ptr<Offscreen> offscreen_;
  std::unique_ptr<Picturer> picturer_;
};

}  // namespace viewer
