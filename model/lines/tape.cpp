#include "model/lines/tape.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include <glm/geometric.hpp>

#include "model/level_text.h"
#include "model/lines/tape_parts.h"

namespace model {

namespace {

constexpr double kSame = 0.0005;  // metres: no tape tells them apart

// The longest wall that one tape reaches along.
size_t baseWall(const SettingOut& out, double tape) {
  size_t best = 0;
  const auto fits = [&](size_t i) { return out.walls[i].length <= tape; };
  for (size_t i = 1; i < out.walls.size(); ++i) {
    const bool longer = out.walls[i].length > out.walls[best].length + 1e-6;
    if (fits(i) ? !fits(best) || longer : !fits(best) && !longer) best = i;
  }
  return best;
}

void addDiagonal(TapeChecks& checks, Tape tape) {
  if (tape.side) return;
  if (tape.from > tape.to) std::swap(tape.from, tape.to);
  const bool there = std::any_of(
      checks.diagonals.begin(), checks.diagonals.end(),
      [&](const Tape& other) { return other.from == tape.from && other.to == tape.to; });
  if (!there) checks.diagonals.push_back(tape);
}

bool isRectangle(const TapeChecks& checks) {
  return checks.sides.size() == 4 && std::all_of(checks.corners.begin(), checks.corners.end(),
                                                 [](const CornerTriangle& t) { return t.square; });
}

std::string sideText(const SettingOut& out, const TapeChecks& checks, size_t i) {
  return out.walls[i].name + " " + lengthText(checks.sides[i].length);
}

void sayFour(const SettingOut& out, TapeChecks& checks) {
  const double d1 = checks.diagonals[0].length, d2 = checks.diagonals[1].length;
  if (!isRectangle(checks)) {
    checks.words.push_back(
        std::abs(d1 - d2) < kSame
            ? "This plan is not a rectangle, though its diagonals are equal: every side must be "
              "right as well"
            : "This plan is not a rectangle: its diagonals are meant to differ, by " +
                  lengthText(std::abs(d1 - d2)));
    return;
  }
  checks.words.push_back(
      "Sides first: " + sideText(out, checks, 0) + " the same as " + sideText(out, checks, 2) +
      ", " + sideText(out, checks, 1) + " the same as " + sideText(out, checks, 3) +
      ". Equal diagonals alone prove nothing: a plan with one end wider than the other can have "
      "them too");
  const double a = checks.sides[0].length, b = checks.sides[1].length;
  char over[32];
  std::snprintf(over, sizeof over, "%.1f", outOfSquare(0.010, a, b) * 1000);
  checks.words.push_back(
      "With the sides right, diagonals that differ by 10 mean out of square by " +
      std::string(over) + " over the " + lengthText(b) + " side: leave " + out.walls[0].name +
      " alone and slide both far corners that much along their line, the way that shortens the "
      "longer diagonal");
}

}  // namespace

double outOfSquare(double difference, double a, double b) {
  return difference * std::hypot(a, b) / (2 * a * b) * b;
}

double moreOnSlope(double level, double fall) { return std::hypot(level, fall) - level; }

Tape tapeBetween(const SettingOut& settingOut, size_t from, size_t to, double tapeLength) {
  const Vec2 a = settingOut.corners[from].at, b = settingOut.corners[to].at;
  const size_t n = settingOut.corners.size();
  Tape tape;
  tape.from = from;
  tape.to = to;
  tape.length = glm::length(b - a);
  tape.side = (from + 1) % n == to || (to + 1) % n == from;
  tape.moreOnGround =
      moreOnSlope(tape.length, settingOut.terrain.levelAt(a) - settingOut.terrain.levelAt(b));
  tape.tooLong = tape.length > tapeLength;
  return tape;
}

TapeChecks deriveTapeChecks(const Job& job, const SettingOut& settingOut) {
  const double reach = job.settingOut.tape;
  const size_t n = settingOut.corners.size();
  TapeChecks checks;
  checks.base = baseWall(settingOut, reach);
  for (size_t i = 0; i < n; ++i) {
    checks.sides.push_back(tapeBetween(settingOut, i, (i + 1) % n, reach));
    checks.corners.push_back(cornerTriangle(settingOut, i, reach));
  }
  checks.fixes = tapeFixes(settingOut, checks.base, reach);
  if (n == 4) {
    for (const size_t i : {0u, 1u}) addDiagonal(checks, tapeBetween(settingOut, i, i + 2, reach));
    sayFour(settingOut, checks);
  } else {
    for (const TapeFix& fix : checks.fixes) {
      for (const Tape& tape : fix.tapes) addDiagonal(checks, tape);
      if (fix.check) addDiagonal(checks, *fix.check);
    }
    std::stable_sort(checks.diagonals.begin(), checks.diagonals.end(),
                     [](const Tape& a, const Tape& b) {
                       return a.from != b.from ? a.from < b.from : a.to < b.to;
                     });
  }
  double most = 0;
  for (const auto* tapes : {&checks.sides, &checks.diagonals})
    for (const Tape& tape : *tapes) most = std::max(most, tape.moreOnGround);
  if (most >= kSame)
    checks.words.push_back(
        "Hold the tape level and plumb down its end. Laid on this ground it reads more, by " +
        lengthText(most) + " at the most");
  return checks;
}

}  // namespace model
