#include "model/drawing/booklet_pages.h"

#include <algorithm>

#include "model/drawing/wrap_text.h"
#include "model/programme/date_words.h"

namespace model {

namespace {

constexpr double kGap = 4;
constexpr double kHead = 18;         // height of the head of a page, mm
constexpr double kBeside = 62;       // width of what stands at its right
constexpr double kFrameWords = 2.0;  // height of capitals
constexpr double kLeading = 1.7;
constexpr size_t kFrameLines = 6;

// At most so many lines; the last is cut.
std::vector<std::string> atMost(std::vector<std::string> lines, size_t most, double width,
                                const Letters& letters, const TextWidth& widthOf) {
  if (lines.size() <= most) return lines;
  std::string rest;
  for (size_t i = most - 1; i < lines.size(); ++i) rest += (rest.empty() ? "" : " ") + lines[i];
  lines.resize(most);
  lines.back() = shortened(rest, width, letters, widthOf);
  return lines;
}

Text wordsAt(const std::string& words, const Vec2& at, double size, bool bold, Up up) {
  Text text;
  text.layer = Layer::Tables;
  text.text = words;
  text.at = at;
  text.size = size;
  text.bold = bold;
  text.up = up;
  return text;
}

}  // namespace

Area bookletArea(const Sheet& sheet) {
  const Area border = insideBorder(sheet);
  return {border.low + Vec2{kGap, kTitleStripHeight + kGap - 1},
          border.high - Vec2{kGap, kGap - 1}};
}

double drawStageHead(Sheet& sheet, const Area& area, const std::string& number,
                     const std::string& name, const std::vector<std::string>& beside,
                     const TextWidth& widthOf) {
  const double width = area.width() - kBeside - kGap;
  sheet.texts.push_back(wordsAt(number, {area.low.x, area.high.y}, 2.2, false, Up::Top));
  // Smaller letters before two lines, two lines before fewer words.
  Letters letters{5, true};
  while (letters.size > 3.5 && widthOf(name, letters.size, true) > width) letters.size -= 0.5;
  const auto lines = atMost(wrapped(name, width, letters, widthOf), 2, width, letters, widthOf);
  const double step = 1.5 * letters.size;
  for (size_t i = 0; i < lines.size(); ++i)
    sheet.texts.push_back(wordsAt(lines[i], {area.low.x, area.high.y - 4.4 - step * double(i)},
                                  letters.size, true, Up::Top));
  double y = area.high.y;
  for (const std::string& each : beside) {
    if (each.empty()) continue;
    const bool first = y == area.high.y;
    Letters small{first ? 2.5 : 2.0, first};
    while (small.size > 1.8 && widthOf(each, small.size, small.bold) > kBeside) small.size -= 0.1;
    Text text = wordsAt(shortened(each, kBeside, small, widthOf), {area.high.x, y}, small.size,
                        small.bold, Up::Top);
    text.across = Across::Right;
    sheet.texts.push_back(text);
    y -= first ? 5 : 4;
  }
  const double low = area.high.y - kHead + 3;
  sheet.line(Layer::Tables, {kPen050, LineType::Continuous}, {area.low.x, low}, {area.high.x, low});
  return area.high.y - kHead;
}

void drawPicture(Sheet& sheet, const Area& area, const Jpeg& jpeg) {
  const Area taken = fitted(jpeg, area);
  sheet.pictures.push_back({Layer::Text, jpeg, taken});
  sheet.outline(Layer::Frame, {kPen018, LineType::Continuous}, taken.corners());
}

double drawFramed(Sheet& sheet, const Area& area, const std::string& title,
                  const std::string& words, double pen, const std::string& more,
                  const TextWidth& widthOf) {
  const Letters letters{kFrameWords, false}, strong{kFrameWords, true};
  const double pad = 2, line = kLeading * kFrameWords;
  const double mark = widthOf(title, strong.size, true) + 3;
  const double width = area.width() - 2 * pad - mark;
  auto lines = wrapped(words, width, letters, widthOf);
  if (lines.size() > kFrameLines) {
    lines.resize(kFrameLines);
    lines.back() = shortened("\u2026 all of it: `" + more + "`", width, letters, widthOf);
  }
  const double high = area.low.y + double(lines.size()) * line + 2 * 1.3;
  const Area frame{area.low, {area.high.x, high}};
  sheet.outline(Layer::Tables, {pen, LineType::Continuous}, frame.corners());
  double y = high - 1.3 - line / 2;
  sheet.texts.push_back(wordsAt(title, {area.low.x + pad, y}, strong.size, true, Up::Middle));
  for (const std::string& each : lines) {
    if (!each.empty())
      sheet.texts.push_back(
          wordsAt(each, {area.low.x + pad + mark, y}, letters.size, false, Up::Middle));
    y -= line;
  }
  return high + 1.5;
}

Booklet::Booklet(const Model& model, const std::string& what, const BookletOptions& options,
                 const TextWidth& widthOf)
    : model_(model),
      options_(options),
      widthOf_(widthOf),
      block_(titleBlockOf(model.job, what, options.date)) {
  block_.scale = "booklet at A4";
  drawing_.title = what + ", " + model.job.name;
}

Drawing Booklet::drawContents(const BookletFront& front, size_t before) const {
  Drawing drawing;
  ReportPages pages(Paper::A4);
  ReportFlow flow(drawing, pages, widthOf_);
  flow.paragraph(front.title, {5, true});
  flow.paragraph(front.words);
  flow.gap(2);
  SheetTable table;
  table.title = "Contents";
  table.columns = {{"stage", true}, {"what", false}, {"from", false}, {"to", false}};
  if (front.crews) table.columns.push_back({"crew", false});
  table.columns.push_back({"page", true});
  const std::vector<Stage>& stages = model_.programme.stages;
  for (size_t i = 0; i < stages.size(); ++i) {
    const std::string& name = i < front.names.size() ? front.names[i] : stages[i].name;
    std::vector<std::string> row{std::to_string(i + 1), name, dateWords(stages[i].start),
                                 dateWords(stages[i].finish)};
    if (front.crews) row.push_back(stages[i].crew);
    row.push_back(std::to_string(before + i + 1));
    table.rows.push_back(std::move(row));
  }
  flow.tables({table});
  for (const SheetTable& each : front.tables) flow.tables({each});
  return drawing;
}

void Booklet::contents(const BookletFront& front) {
  if (options_.stage) return;
  // Page numbers with more digits may need another page; they never need fewer.
  size_t before = 1;
  Drawing drawn = drawContents(front, before);
  while (drawn.sheets.size() > before) {
    before = drawn.sheets.size();
    drawn = drawContents(front, before);
  }
  drawing_.sheets = std::move(drawn.sheets);
}

void Booklet::pages(const std::function<void(Sheet&, size_t stage)>& draw) {
  const size_t count = model_.programme.stages.size();
  for (size_t i = 0; i < count; ++i) {
    if (options_.stage && *options_.stage != i) continue;
    Sheet sheet = blankSheet(Paper::A4, Lie::Portrait);
    sheet.title = model_.programme.stages[i].name;
    draw(sheet, i);
    drawing_.sheets.push_back(std::move(sheet));
  }
}

Drawing Booklet::finish() {
  if (options_.stage) {
    block_.sheet = "1 of 1";
    for (Sheet& sheet : drawing_.sheets) drawTitleStrip(sheet, block_, widthOf_);
  } else {
    ReportPages(Paper::A4).finish(drawing_, block_, widthOf_);
  }
  return std::move(drawing_);
}

}  // namespace model
