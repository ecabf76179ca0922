#include "model/job/text_edits.h"

#include <algorithm>

namespace model {

void TextEdits::replace(size_t begin, size_t end, std::string with) {
  edits_.push_back({begin, end, std::move(with)});
}

std::string TextEdits::apply(std::string_view text) const {
  std::vector<Edit> sorted = edits_;
  std::stable_sort(sorted.begin(), sorted.end(), [](const Edit& a, const Edit& b) {
    if (a.begin != b.begin) return a.begin < b.begin;
    return a.end == a.begin && b.end != b.begin;  // insertions go before what is taken out there
  });
  std::string result;
  size_t at = 0;
  for (const Edit& edit : sorted) {
    if (edit.begin < at || edit.end > text.size() || edit.begin > edit.end) continue;
    result.append(text, at, edit.begin - at);
    result += edit.with;
    at = edit.end;
  }
  return result.append(text, at, std::string_view::npos);
}

}  // namespace model
