// Items of lists in brackets: points of an outline, spot levels.
#include "model/job/rewriter.h"
#include "model/job/value_text.h"

namespace model {

void Rewriter::changeList(const toml::array& list, const ListChange& change) {
  std::string pending;  // new items waiting for the old one that they stand before
  const auto addPending = [&](const std::string& item) {
    pending += (pending.empty() ? "" : ", ") + item;
  };
  for (const AlignedPair& row : change.rows) {
    if (!row.before) {
      addPending(change.newItems[*row.now]);
      continue;
    }
    const toml::node& item = *list.get(*row.before);
    const size_t begin = beginOf(item);
    const bool last = *row.before + 1 == list.size();
    if (!pending.empty() && (row.now || !last)) {
      const size_t start = lineStart(begin);
      const bool ownLine = firstOnLine(begin);
      const std::string gap = ownLine ? newLine_ + text_.substr(start, begin - start) : " ";
      edits_.insert(begin, pending + "," + gap);
      pending.clear();
    }
    if (row.now) continue;
    if (!last) {
      edits_.remove(begin, beginOf(*list.get(*row.before + 1)));
    } else {
      // What is still to come takes the last one's place; a comma behind it may stay.
      if (!pending.empty()) {
        edits_.replace(begin, endOf(item), pending);
        pending.clear();
        // Items that come after it can only be new ones.
        for (const AlignedPair& rest : change.rows) {
          if (!rest.before && *rest.now > 0 && &rest > &row) {
            edits_.insert(endOf(item), ", " + change.newItems[*rest.now]);
          }
        }
        return;
      }
      size_t end = endOf(item);
      const size_t comma = text_.find_first_not_of(" \t\r\n", end);
      if (comma != std::string::npos && text_[comma] == ',') end = comma + 1;
      edits_.remove(begin, end);
    }
  }
  if (!pending.empty()) appendToList(list, pending);
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
