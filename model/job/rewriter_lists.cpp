// Items of lists in brackets: points of an outline, spot levels.
#include "model/job/rewriter.h"
#include "model/job/value_text.h"

namespace model {

// align() pairs what came with what went between two items that stayed, so that new items only
// stand before one that stays, or at the end.
void Rewriter::changeList(const toml::array& list, const ListChange& change) {
  std::string pending;
  for (const AlignedPair& row : change.rows) {
    if (!row.before) {
      pending += (pending.empty() ? "" : ", ") + change.newItems[*row.now];
    } else if (!row.now) {
      removeItem(list, *row.before);
    } else if (!pending.empty()) {
      const size_t begin = beginOf(*list.get(*row.before));
      const size_t start = lineStart(begin);
      const bool ownLine = firstOnLine(begin);
      const std::string gap = ownLine ? newLine_ + text_.substr(start, begin - start) : " ";
      edits_.insert(begin, pending + "," + gap);
      pending.clear();
    }
  }
  if (!pending.empty()) appendToList(list, pending);
}

// An item goes with all that stands before the next one: its comma and its comment.
void Rewriter::removeItem(const toml::array& list, size_t index) {
  const toml::node& item = *list.get(index);
  if (index + 1 < list.size()) {
    edits_.remove(beginOf(item), beginOf(*list.get(index + 1)));
    return;
  }
  size_t end = endOf(item);
  const size_t comma = text_.find_first_not_of(" \t\r\n", end);
  if (comma != std::string::npos && text_[comma] == ',') end = comma + 1;
  edits_.remove(beginOf(item), end);
}

// Behind the last item, on a line of its own when the last one has one; a comment behind the last
// item stays with it.
void Rewriter::appendToList(const toml::array& list, const std::string& items) {
  if (list.empty()) {
    edits_.insert(endOf(list) - 1, items);
    return;
  }
  const toml::node& last = *list.get(list.size() - 1);
  const size_t begin = beginOf(last), end = endOf(last);
  const size_t next = text_.find_first_not_of(" \t", end);
  const bool comma = next != std::string::npos && text_[next] == ',';
  if (!firstOnLine(begin)) {
    edits_.insert(end, ", " + items);
    return;
  }
  const std::string indent = text_.substr(lineStart(begin), begin - lineStart(begin));
  if (!comma) edits_.insert(end, ",");
  const size_t behind = comma ? next + 1 : end;
  const size_t rest = text_.find_first_not_of(" \t", behind);
  // `]` on the same line: the new item goes before it.
  const bool closesHere = rest != std::string::npos && text_[rest] == ']';
  edits_.insert(closesHere ? behind : lineEnd(behind),
                newLine_ + indent + items + (comma ? "," : ""));
}

void Rewriter::rewriteCorners(const toml::array& list, const Outline& before, const Outline& now) {
  ListChange change;
  change.rows =
      align(before.size(), now.size(), [&](size_t i, size_t j) { return before[i] == now[j]; });
  for (const Vec2& point : now) change.newItems.push_back(pointText(point));
  for (const AlignedPair& row : change.rows) {
    if (!row.before || !row.now || before[*row.before] == now[*row.now]) continue;
    const toml::node& item = *list.get(*row.before);
    edits_.replace(beginOf(item), endOf(item), change.newItems[*row.now]);
  }
  changeList(list, change);
}

}  // namespace model
