#include "model/works/append_works.h"

#include <iterator>

namespace model {
namespace {

template <typename T>
void append(std::vector<T>& to, std::vector<T>& from) {
  to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

}  // namespace

void appendWorks(Works& works, Works part) {
  if (works.elements.empty() && works.frames.empty() && works.strings.empty()) {
    works = std::move(part);
    return;
  }
  for (Element& element : part.elements) {
    if (element.unitCount == 0) continue;
    element.firstUnit += works.units.size();
    element.frame += works.frames.size();
  }
  append(works.elements, part.elements);
  append(works.strings, part.strings);
  append(works.units, part.units);
  append(works.frames, part.frames);
}

}  // namespace model
