#include "model/drawing/answer_lines.h"

namespace model {

namespace {

constexpr double kLine = 8;  // to write on by hand, mm
constexpr int kLines = 3;
constexpr double kLetters = 1.8, kBox = 3;

void wordsAt(Sheet& sheet, const std::string& words, const Vec2& at) {
  Text text;
  text.layer = Layer::Tables;
  text.size = kLetters;
  text.at = at;
  text.text = words;
  sheet.texts.push_back(text);
}

}  // namespace

void drawAnswer(ReportFlow& flow, const TextWidth& widthOf, const std::vector<std::string>& boxes) {
  const TablePlace place = flow.room(kAnswerHeight);
  Sheet& sheet = flow.drawing().sheets[place.sheet];
  for (int i = 0; i < kLines; ++i) {
    const double y = place.area.high.y - kLine * (i + 1);
    const bool last = i + 1 == kLines;
    const std::string words = i == 0 ? "Answer" : last ? "Name, date" : "";
    double x = place.area.low.x + (words.empty() ? 0 : 16);
    if (!words.empty()) wordsAt(sheet, words, {place.area.low.x, y + 1});
    for (size_t k = 0; i == 0 && k < boxes.size(); ++k) {
      const Vec2 low{x, y + 0.6};
      sheet.outline(Layer::Tables, {kPen025, LineType::Continuous},
                    Area{low, low + Vec2{kBox, kBox}}.corners());
      wordsAt(sheet, boxes[k], {x + kBox + 1.2, y + 1});
      x += kBox + 1.2 + widthOf(boxes[k], kLetters, false) + 5;
    }
    sheet.line(Layer::Tables, {kPen018, LineType::Continuous}, {x, y}, {place.area.high.x, y});
  }
}

}  // namespace model
