#include "model/drawing/paragraph.h"

namespace model {

TablePlace drawParagraph(Drawing& drawing, const std::string& words, TablePlace place,
                         const std::function<TablePlace(Drawing&)>& nextPlace,
                         const Letters& letters, double leading, const TextWidth& widthOf) {
  const double line = leading * letters.size;
  std::string rest = words;
  while (!rest.empty()) {
    std::vector<std::string> drawn;
    for (const std::string& each : wrapped(rest, place.area.width(), letters, widthOf)) {
      if (place.area.height() < line) break;
      Text text;
      text.layer = Layer::Tables;
      text.text = each;
      text.size = letters.size;
      text.bold = letters.bold;
      text.up = Up::Top;
      text.at = {place.area.low.x, place.area.high.y};
      drawing.sheets[place.sheet].texts.push_back(text);
      place.area.high.y -= line;
      drawn.push_back(each);
    }
    rest = textAfter(rest, drawn);
    if (!rest.empty()) place = nextPlace(drawing);
  }
  return place;
}

}  // namespace model
