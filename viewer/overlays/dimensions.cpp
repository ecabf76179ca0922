// Wall lengths as dimension lines outside the walls, and the shortest lines to what stands round:
// all of them in plan, in elevations and sections those that are seen at their length, elsewhere
// those that nothing hides.
#include <algorithm>
#include <cmath>
#include <numeric>

#include <glm/geometric.hpp>
#include <glm/vec4.hpp>

#include "model/level_text.h"
#include "model/settingout/offsets.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/plan_dimensions.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

constexpr double kOff = 1.55;    // metres from the wall to its dimension line
constexpr float kShortest = 34;  // units; shorter lines in space carry no text
constexpr double kOverGround = 0.05;

// A dimension line as it lies on the sheet.
struct Line {
  glm::vec2 from{0, 0}, to{0, 0};
  glm::vec2 side{0, -1};  // where its text would rather stand
  unsigned rgb = ink::kInk;
  float opacity = 1;
};

// An oblique stroke through the end of a dimension line.
void stroke(const Pen& pen, const glm::vec2& at, const glm::vec2& along, const Line& line) {
  const glm::vec2 slant = glm::normalize(along + glm::vec2(along.y, -along.x)) * 6.0f * pen.unit();
  pen.line(at - slant, at + slant, line.rgb, 1.8f, line.opacity);
}

void draw(OverlaySheet& sheet, const Line& line) {
  const float length = glm::distance(line.from, line.to);
  if (length < 0.5f) return;
  sheet.pen.line(line.from, line.to, line.rgb, 1.2f, line.opacity);
  const glm::vec2 along = (line.to - line.from) / length;
  stroke(sheet.pen, line.from, along, line);
  stroke(sheet.pen, line.to, along, line);
}

// Beside the middle; failing that, elsewhere along the line or on its other side.
LabelRequest textOf(const OverlaySheet& sheet, const Line& line, const std::string& text,
                    int priority) {
  LabelRequest request;
  request.anchor = (line.from + line.to) * 0.5f;
  request.size = sheet.pen.size(text);
  request.towards = line.side;
  request.besideLine = true;
  request.priority = priority;
  for (const float part : {0.5f, 0.35f, 0.65f, 0.2f, 0.8f})
    for (const float way : {1.0f, -1.0f})
      request.others.push_back({glm::mix(line.from, line.to, part), line.side * way});
  return request;
}

// Square to the line on the sheet, to where `outside` lies.
glm::vec2 sideTowards(const glm::vec2& from, const glm::vec2& to, const glm::vec2& outside) {
  const glm::vec2 along = glm::normalize(to - from);
  const glm::vec2 side{along.y, -along.x};
  return glm::dot(side, outside - (from + to) * 0.5f) < 0 ? -side : side;
}

double lineLevel(const OverlaySheet& sheet) {
  return sheet.model.settingOut.levels.groundHigh + kOverGround;
}

// ---- plan -------------------------------------------------------------------

// What is in sight of a plan, and how large.
PlanRoom roomOf(const OverlaySheet& sheet, const std::vector<CornerRing>& rings) {
  PlanRoom room;
  const Box& area = sheet.layout.drawing;
  const double level = lineLevel(sheet);
  const auto onGround = [&](const glm::vec2& pixel) -> std::optional<model::Vec2> {
    const glm::vec2 share{pixel.x / sheet.layout.sheet.width(),
                          pixel.y / sheet.layout.sheet.height()};
    const Ray ray = sheet.frame.camera.rayThrough(share, sheet.aspect());
    if (std::abs(ray.direction.z) < 1e-4f) return std::nullopt;
    const float along = (float(level) - ray.from.z) / ray.direction.z;
    return model::Vec2(sheet.scene.world(ray.from + ray.direction * along));
  };
  const auto a = onGround({area.left, area.top}), b = onGround({area.right, area.bottom});
  if (!a || !b) return room;
  const double across = glm::length(*b - *a);
  if (across > 0) room.metre = double(std::hypot(area.width(), area.height())) / across;
  // A turned plan has no upright limits.
  if (std::abs(std::sin(2 * sheet.frame.camera.azimuth)) < 0.01) {
    room.low = {std::min(a->x, b->x), std::min(a->y, b->y)};
    room.high = {std::max(a->x, b->x), std::max(a->y, b->y)};
  }
  for (const CornerRing& ring : rings) {
    if (const auto at = onGround(ring.at)) room.places.push_back(*at);
    room.placeRadius = double(ring.radius + 2 * sheet.pen.unit()) / room.metre;
  }
  return room;
}

void drawInPlan(OverlaySheet& sheet, const PlanDimension& dimension) {
  const double level = lineLevel(sheet);
  const auto at = [&](const model::Vec2& p) {
    return sheet.onSheet(sheet.scene.local({p, level}));
  };
  const auto from = at(dimension.from), to = at(dimension.to);
  const auto outside = at((dimension.from + dimension.to) * 0.5 + dimension.outward * 0.5);
  if (!from || !to || !outside || glm::distance(*from, *to) < 0.5f) return;
  const unsigned rgb = dimension.offset ? ink::kSoft : ink::kInk;
  const Line line{*from, *to, sideTowards(*from, *to, *outside), rgb, 1};
  if (!dimension.offset)
    for (const model::Vec2& corner : {dimension.start, dimension.end}) {
      const auto a = at(corner + dimension.outward * 0.2);
      const auto b = at(corner + dimension.outward * (dimension.off + 0.15));
      if (a && b) sheet.pen.line(*a, *b, rgb, 1, 0.4f);
    }
  draw(sheet, line);
  sheet.keepClear(line.from, line.to);
  const std::string text = model::lengthText(dimension.length);
  LabelRequest request = textOf(sheet, line, text, dimension.offset ? 2 : 3);
  request.must = true;
  sheet.ask(request, {text, rgb, 1, true, Cut::Text});
}

// ---- elevations and sections ---------------------------------------------------

bool levelView(const Camera& camera) {
  return camera.parallel && std::abs(camera.elevation) < 0.05;
}

// A wall that is seen at its length, and how far off it is.
struct SquareWall {
  size_t wall = 0;
  float depth = 0;
};

// Whether some of the wall is in sight: its outer face, or in a section the inner one.
bool inSight(const OverlaySheet& sheet, const model::WallLine& wall, bool facing) {
  constexpr double kBehindFace = 0.06, kOverDampCourse = 1.0;
  const model::FaceDistances& faces = sheet.model.settingOut.faceDistances;
  const double inward = facing ? faces.finishedFace + kBehindFace : faces.innerFace - kBehindFace;
  const double level = sheet.model.settingOut.levels.dampCourse + kOverDampCourse;
  for (const double part : {0.5, 0.2, 0.8, 0.35, 0.65})
    if (!sheet.hidden(sheet.scene.local({wall.at(wall.length * part, inward), level}))) return true;
  return false;
}

bool cutAway(const OverlaySheet& sheet, const model::WallLine& wall) {
  const Section& section = sheet.frame.section;
  if (!section.on) return false;
  for (const model::Vec2& p : {wall.start, wall.end}) {
    const glm::vec3 local = sheet.scene.local({p, 0});
    if (glm::dot(section.plane, glm::vec4(local, 1)) > 0) return true;
  }
  return false;
}

std::vector<SquareWall> squareWalls(const OverlaySheet& sheet) {
  constexpr double kSquare = 0.9996;  // cosine of 1.6 degrees: a wall of 10 m looks 4 mm shorter
  const Camera& camera = sheet.frame.camera;
  const model::Vec2 looking{std::sin(camera.azimuth), std::cos(camera.azimuth)};
  std::vector<SquareWall> found;
  const auto& walls = sheet.model.settingOut.walls;
  for (size_t i = 0; i < walls.size(); ++i) {
    const double turn = glm::dot(looking, walls[i].outward);
    const bool facing = turn < 0;
    if (std::abs(turn) < kSquare || (!facing && !sheet.frame.section.on)) continue;
    if (cutAway(sheet, walls[i]) || !inSight(sheet, walls[i], facing)) continue;
    found.push_back({i, float(glm::dot(looking, (walls[i].start + walls[i].end) * 0.5))});
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return a.depth < b.depth; });
  return found;
}

void drawSquare(OverlaySheet& sheet) {
  struct Span {
    float left, right;
  };
  std::vector<Span> drawn;
  // Under the ground line, where an elevation is plain; a section has its foundations there.
  constexpr double kUnderGround = 0.45;
  const model::Levels& levels = sheet.model.settingOut.levels;
  const double level = sheet.frame.section.on ? lineLevel(sheet) : levels.groundLow - kUnderGround;
  for (const SquareWall& square : squareWalls(sheet)) {
    const model::WallLine& wall = sheet.model.settingOut.walls[square.wall];
    const auto a = sheet.onSheet(sheet.scene.local({wall.start, level}));
    const auto b = sheet.onSheet(sheet.scene.local({wall.end, level}));
    if (!a || !b || glm::distance(*a, *b) < kShortest * sheet.pen.unit()) continue;
    const Span span{std::min(a->x, b->x), std::max(a->x, b->x)};
    // One behind another would only lie over it.
    if (std::any_of(drawn.begin(), drawn.end(), [&](const Span& other) {
          return std::min(span.right, other.right) - std::max(span.left, other.left) > 2;
        }))
      continue;
    drawn.push_back(span);
    const Line line{*a, *b, {0, 1}, ink::kInk, 1};
    draw(sheet, line);
    sheet.keepClear(line.from, line.to);
    const std::string text = model::lengthText(wall.length);
    sheet.ask(textOf(sheet, line, text, 3), {text, ink::kInk, 1, true, Cut::Text});
  }
}

// ---- in space -----------------------------------------------------------------

void drawInSpace(OverlaySheet& sheet, const glm::vec3& a, const glm::vec3& b,
                 const glm::vec3& outward, double metres, bool offset) {
  const auto from = sheet.onSheet(a), to = sheet.onSheet(b);
  if (!from || !to || glm::distance(*from, *to) < kShortest * sheet.pen.unit()) return;
  const glm::vec3 middle = (a + b) * 0.5f;
  const auto outside = sheet.onSheet(middle + outward);
  const glm::vec2 side = sideTowards(*from, *to, outside.value_or(*from));
  const unsigned rgb = offset ? ink::kSoft : ink::kInk;
  const Line line{*from, *to, side, rgb, sheet.hidden(middle) ? 0.25f : 1.0f};
  draw(sheet, line);
  // What lies behind walls is not written over them; plans and other sides say it.
  if (line.opacity < 1) return;
  sheet.keepClear(line.from, line.to);
  const std::string text = model::lengthText(metres);
  sheet.ask(textOf(sheet, line, text, offset ? 2 : 3), {text, rgb, 1, true, Cut::Text});
}

void wallInSpace(OverlaySheet& sheet, const model::WallLine& wall) {
  const double level = lineLevel(sheet);
  const auto at = [&](const model::Vec2& p, double off) {
    return sheet.scene.local({p + wall.outward * off, level});
  };
  const auto a = sheet.onSheet(at(wall.start, kOff)), b = sheet.onSheet(at(wall.end, kOff));
  if (!a || !b || glm::distance(*a, *b) < kShortest * sheet.pen.unit()) return;
  for (const model::Vec2& corner : {wall.start, wall.end}) {
    const auto from = sheet.onSheet(at(corner, 0.2)), to = sheet.onSheet(at(corner, kOff + 0.15));
    if (from && to) sheet.pen.line(*from, *to, ink::kInk, 1, 0.4f);
  }
  drawInSpace(sheet, at(wall.start, kOff), at(wall.end, kOff),
              glm::vec3(glm::vec2(wall.outward), 0) * 0.5f, wall.length, false);
}

}  // namespace

void drawDimensions(OverlaySheet& sheet, const std::vector<CornerRing>& rings) {
  const model::SettingOut& out = sheet.model.settingOut;
  if (levelView(sheet.frame.camera)) return drawSquare(sheet);
  if (isPlan(sheet.frame.camera)) {
    for (const PlanDimension& each :
         planDimensions(sheet.model.job, out, sheet.options.facts->offsets, roomOf(sheet, rings)))
      drawInPlan(sheet, each);
    return;
  }
  for (const model::WallLine& wall : out.walls) wallInSpace(sheet, wall);
  const double level = lineLevel(sheet);
  for (const model::SiteOffset& offset : sheet.options.facts->offsets) {
    if (offset.distance < kTouching) continue;
    drawInSpace(sheet, sheet.scene.local({offset.from, level}),
                sheet.scene.local({offset.at, level}), glm::vec3(0), offset.distance, true);
  }
}

}  // namespace viewer
