// Which two corners each other corner is fixed from.
#include <algorithm>
#include <cmath>
#include <limits>

#include <glm/geometric.hpp>
#include <glm/trigonometric.hpp>

#include "model/lines/tape_parts.h"

namespace model {

namespace {

// Common practice, no source: tapes that cross flatter leave the point loose along them.
constexpr double kFlattest = 30;  // degrees
constexpr int kNotYet = std::numeric_limits<int>::max();

// A way to fix a corner: better when nearer to the base, since errors add up, then when squarer.
struct Choice {
  size_t corner = 0, a = 0, b = 0;
  bool reached = true;  // by the tape
  bool weak = false;
  int steps = kNotYet;  // from the base
  double sine = 0;

  bool betterThan(const Choice& other) const {
    if (reached != other.reached) return reached;
    if (weak != other.weak) return !weak;
    if (steps != other.steps) return steps < other.steps;
    return sine > other.sine + 1e-6;
  }
};

double angleAt(const Vec2& p, const Vec2& a, const Vec2& b) {
  const Vec2 u = a - p, v = b - p;
  return glm::degrees(std::atan2(std::abs(cross(u, v)), glm::dot(u, v)));
}

class Fixer {
 public:
  Fixer(const SettingOut& out, double tape) : out_(out), tape_(tape) {
    steps_.assign(out.corners.size(), kNotYet);
  }

  std::vector<TapeFix> fixFrom(size_t base) {
    steps_[out_.walls[base].from] = steps_[out_.walls[base].to] = 0;
    std::vector<TapeFix> fixes;
    for (size_t left = out_.corners.size() - 2; left > 0; --left) {
      const Choice best = bestChoice();
      fixes.push_back(fixOf(best));
      steps_[best.corner] = best.steps;
    }
    return fixes;
  }

 private:
  Vec2 at(size_t corner) const { return out_.corners[corner].at; }
  double distance(size_t a, size_t b) const { return glm::length(at(a) - at(b)); }

  Choice choice(size_t corner, size_t a, size_t b) const {
    Choice c;
    c.corner = corner;
    c.a = a;
    c.b = b;
    const double angle = angleAt(at(corner), at(a), at(b));
    c.reached = distance(corner, a) <= tape_ && distance(corner, b) <= tape_;
    c.weak = angle < kFlattest || angle > 180 - kFlattest;
    c.steps = std::max(steps_[a], steps_[b]) + 1;
    c.sine = std::sin(glm::radians(angle));
    return c;
  }

  Choice bestChoice() const {
    std::optional<Choice> best;
    for (size_t corner = 0; corner < steps_.size(); ++corner) {
      if (steps_[corner] != kNotYet) continue;
      for (size_t a = 0; a < steps_.size(); ++a) {
        for (size_t b = a + 1; b < steps_.size(); ++b) {
          if (steps_[a] == kNotYet || steps_[b] == kNotYet) continue;
          const Choice c = choice(corner, a, b);
          if (!best || c.betterThan(*best)) best = c;
        }
      }
    }
    return *best;
  }

  TapeFix fixOf(const Choice& c) const {
    TapeFix fix;
    fix.corner = c.corner;
    fix.tapes = {tapeBetween(out_, c.a, c.corner, tape_), tapeBetween(out_, c.b, c.corner, tape_)};
    fix.angle = angleAt(at(c.corner), at(c.a), at(c.b));
    fix.weak = c.weak;
    // The check crosses both as squarely as may be.
    double finest = 0;
    for (size_t third = 0; third < steps_.size(); ++third) {
      if (steps_[third] == kNotYet || third == c.a || third == c.b) continue;
      const double fine =
          std::min(std::sin(glm::radians(angleAt(at(c.corner), at(third), at(c.a)))),
                   std::sin(glm::radians(angleAt(at(c.corner), at(third), at(c.b)))));
      const Tape tape = tapeBetween(out_, third, c.corner, tape_);
      if (tape.tooLong || fine <= finest + 1e-6) continue;
      finest = fine;
      fix.check = tape;
    }
    return fix;
  }

  const SettingOut& out_;
  double tape_ = 0;
  std::vector<int> steps_;  // of each corner from the base
};

}  // namespace

std::vector<TapeFix> tapeFixes(const SettingOut& settingOut, size_t base, double tapeLength) {
  return Fixer(settingOut, tapeLength).fixFrom(base);
}

}  // namespace model
