// What is set out and checked with a tape: marks on the boards, diagonals, triangles, arcs of two
// tapes, offset lines with their stakes.
#include <algorithm>
#include <array>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/level_text.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/setting_out_lines.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

constexpr float kTick = 0.09f;    // metres, half a mark across its board
constexpr float kMarkPixels = 9;  // units to a mark, on average, that give its figure room
constexpr float kShortest = 60;   // units; shorter lines carry no text

// ---- boards -------------------------------------------------------------------

void askForMark(OverlaySheet& sheet, const glm::vec2& at, const glm::vec2& away,
                const model::BoardMark& mark) {
  const std::string words = mark.name + " " + model::lengthText(mark.along);
  const float off = 7 * sheet.pen.unit();
  LabelRequest request;
  request.anchor = at + away * off;
  request.size = sheet.pen.size(words);
  request.towards = away;
  request.others.push_back({at - away * off, -away});
  request.priority = 2;  // before the names of strings, which say less
  sheet.ask(request, {words, ink::kStringWords, 1, true, Cut::Text});
}

// Ticks through the board at its marks; their figures where the board is large enough on the sheet.
void drawBoard(OverlaySheet& sheet, const model::Board& board) {
  const auto point = [&](const model::Vec2& p) { return sheet.scene.local({p, board.top}); };
  const glm::vec3 along = glm::normalize(point(board.to) - point(board.from));
  const glm::vec3 across{-along.y, along.x, 0};
  const bool plan = isPlan(sheet.frame.camera);
  std::optional<glm::vec2> first, last;
  for (const model::BoardMark& mark : board.marks) {
    const glm::vec3 at = point(mark.at);
    const glm::vec3 half = plan ? across * kTick : glm::vec3(0, 0, kTick * 0.6f);
    const glm::vec3 a = at - half, b = plan ? at + half : at;
    settingOutLine(sheet, a, b, {ink::kInk, 1.8f, 1, false});
    const auto on = sheet.onSheet(at);
    if (!first) first = on;
    last = on;
  }
  if (!first || !last ||
      glm::distance(*first, *last) < kMarkPixels * sheet.pen.unit() * float(board.marks.size()))
    return;
  const model::WallLine& wall = sheet.model.settingOut.walls[board.wall];
  const model::Vec2 corner = board.atEnd ? wall.end : wall.start;
  for (const model::BoardMark& mark : board.marks) {
    const auto on = sheet.onSheet(point(mark.at));
    const model::Vec2 outwards = glm::normalize((board.from + board.to) * 0.5 - corner);
    const auto out = sheet.onSheet(point(mark.at + outwards * 0.3));
    if (!on || !out || sheet.hidden(point(mark.at) + glm::vec3(0, 0, 0.02f))) continue;
    if (glm::distance(*on, *out) < 1) continue;
    askForMark(sheet, *on, glm::normalize(*out - *on), mark);
  }
}

// ---- tape checks ----------------------------------------------------------------

void askAlong(OverlaySheet& sheet, const glm::vec3& a, const glm::vec3& b, const std::string& words,
              unsigned rgb, int priority) {
  const auto from = sheet.onSheet(a), to = sheet.onSheet(b);
  if (!from || !to || glm::distance(*from, *to) < kShortest * sheet.pen.unit()) return;
  if (!isPlan(sheet.frame.camera) && sheet.hidden((a + b) * 0.5f)) return;
  const glm::vec2 along = glm::normalize(*to - *from), side{along.y, -along.x};
  LabelRequest request;
  request.anchor = glm::mix(*from, *to, 0.4f);
  request.size = sheet.pen.size(words);
  request.towards = side;
  request.besideLine = true;
  for (const float part : {0.4f, 0.6f, 0.3f, 0.7f, 0.2f, 0.8f})
    for (const float way : {1.0f, -1.0f})
      request.others.push_back({glm::mix(*from, *to, part), side * way});
  request.priority = priority;
  sheet.ask(request, {words, rgb, 1, true, Cut::Text});
}

glm::vec3 cornerAt(const OverlaySheet& sheet, size_t corner) {
  return onSettingOutLevel(sheet, sheet.model.settingOut.corners[corner].at);
}

void drawDiagonal(OverlaySheet& sheet, const model::Tape& tape) {
  const glm::vec3 a = cornerAt(sheet, tape.from), b = cornerAt(sheet, tape.to);
  settingOutLine(sheet, a, b, {ink::kInk, 1.1f, 0.75f, true});
  const auto& corners = sheet.model.settingOut.corners;
  const std::string words = corners[tape.from].letter + "-" + corners[tape.to].letter + " " +
                            model::lengthText(tape.length);
  askAlong(sheet, a, b, words, ink::kInk, 2);
}

void drawTriangle(OverlaySheet& sheet, const model::CornerTriangle& triangle) {
  if (triangle.inLine || triangle.before <= 0 || triangle.after <= 0) return;
  const model::SettingOut& out = sheet.model.settingOut;
  for (const model::WallLine& after : out.walls) {
    if (after.from != triangle.corner) continue;
    for (const model::WallLine& before : out.walls) {
      if (before.to != triangle.corner) continue;
      const model::Vec2 p =
          before.end + glm::normalize(before.start - before.end) * triangle.before;
      const model::Vec2 q = after.start + glm::normalize(after.end - after.start) * triangle.after;
      const glm::vec3 a = onSettingOutLevel(sheet, p), b = onSettingOutLevel(sheet, q);
      settingOutLine(sheet, a, b, {ink::kStrings, 1.2f, 0.9f, true});
      const std::string words = model::lengthText(triangle.before) + " / " +
                                model::lengthText(triangle.after) + " / " +
                                model::lengthText(triangle.across);
      // Figures that are far longer than their line would bury it.
      constexpr float kOfText = 0.8f;
      const auto from = sheet.onSheet(a), to = sheet.onSheet(b);
      if (from && to && glm::distance(*from, *to) > kOfText * sheet.pen.size(words).x)
        askAlong(sheet, a, b, words, ink::kStringWords, 1);
    }
  }
}

// A short piece of the arc that the tape's end draws past the corner.
void drawArc(OverlaySheet& sheet, const model::Tape& tape) {
  const auto& corners = sheet.model.settingOut.corners;
  const model::Vec2 centre = corners[tape.from].at, to = corners[tape.to].at - centre;
  constexpr double kReach = 0.45;  // metres to either side
  constexpr int kPieces = 6;
  const double middle = std::atan2(to.y, to.x), half = kReach / std::max(0.5, tape.length);
  const auto at = [&](int i) {
    const double turn = middle + half * (2.0 * i / kPieces - 1);
    return onSettingOutLevel(sheet,
                             centre + model::Vec2(std::cos(turn), std::sin(turn)) * tape.length);
  };
  for (int i = 0; i < kPieces; ++i)
    settingOutLine(sheet, at(i), at(i + 1), {ink::kStrings, 1.4f, 1, false});
}

// ---- offset lines -----------------------------------------------------------------

void drawOffset(OverlaySheet& sheet, const model::OffsetPair& pair) {
  if (!pair.found) return;
  const auto point = [&](const model::OffsetPair::Stake& stake) {
    return sheet.scene.local({stake.at, stake.top});
  };
  const glm::vec3 a = point(pair.stakes[0]), b = point(pair.stakes[1]);
  settingOutLine(sheet, a, b, {ink::kStrings, 1.6f, 1, false});
  for (const glm::vec3& stake : {a, b}) {
    const auto at = sheet.onSheet(stake);
    if (!at) continue;
    const Box box = Box{at->x, at->y, at->x, at->y}.grown(4 * sheet.pen.unit());
    sheet.pen.outline(box, ink::kStrings, 1.8f);
    settingOutLine(sheet, stake, stake - glm::vec3(0, 0, 0.4f), {ink::kStrings, 2, 1, false});
  }
  const std::string wall = sheet.model.settingOut.walls[pair.wall].name;
  askAlong(sheet, a, b, wall + " offset line, " + model::offsetWords(pair.out), ink::kStringWords,
           2);
}

}  // namespace

glm::vec3 onSettingOutLevel(const OverlaySheet& sheet, const model::Vec2& p) {
  constexpr double kOverGround = 0.05;
  return sheet.scene.local({p, sheet.model.settingOut.levels.groundHigh + kOverGround});
}

void settingOutLine(OverlaySheet& sheet, const glm::vec3& a, const glm::vec3& b,
                    const SettingOutLook& look) {
  constexpr int kDashes = 16;
  const bool plan = isPlan(sheet.frame.camera);
  const int pieces = look.dashed ? kDashes : plan ? 1 : 6;
  for (int i = 0; i < pieces; ++i) {
    const float s = float(i) / float(pieces);
    const float t = (float(i) + (look.dashed ? 0.65f : 1.0f)) / float(pieces);
    const auto from = sheet.onSheet(glm::mix(a, b, s)), to = sheet.onSheet(glm::mix(a, b, t));
    if (!from || !to) continue;
    // A plan is the drawing itself; elsewhere what stands in front keeps its place.
    const bool dim = !plan && sheet.hidden(glm::mix(a, b, (s + t) / 2));
    sheet.pen.line(*from, *to, look.rgb, look.width, look.opacity * (dim ? 0.15f : 1.0f));
  }
}

void drawSettingOut(OverlaySheet& sheet, const model::SetOutLines& lines) {
  drawLimits(sheet, lines);
  // From the side the lines lie in one another: there only what has a height is told.
  if (isElevation(sheet.frame.camera)) return;
  for (const model::OffsetPair& pair : lines.boards.offsets) drawOffset(sheet, pair);
  for (const model::Tape& tape : lines.tape.diagonals) drawDiagonal(sheet, tape);
  // In space their figures would bury what they check.
  if (isPlan(sheet.frame.camera))
    for (const model::CornerTriangle& triangle : lines.tape.corners) drawTriangle(sheet, triangle);
  for (const model::TapeFix& fix : lines.tape.fixes)
    for (const model::Tape& tape : fix.tapes) drawArc(sheet, tape);
  if (!sheet.frame.profiles) return;
  for (const model::Board& board : lines.boards.boards) drawBoard(sheet, board);
}

}  // namespace viewer
