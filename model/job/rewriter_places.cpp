// Where things stand in the text that is rewritten.
#include <algorithm>

#include "model/job/rewriter.h"

namespace model {

namespace {

Place placeOf(const toml::source_position& position) {
  return {static_cast<int>(position.line), static_cast<int>(position.column)};
}

}  // namespace

size_t Rewriter::beginOf(const toml::node& node) const {
  return lines_.offsetOf(placeOf(node.source().begin));
}

size_t Rewriter::endOf(const toml::node& node) const {
  return lines_.offsetOf(placeOf(node.source().end));
}

size_t Rewriter::beginOf(const toml::key& key) const {
  return lines_.offsetOf(placeOf(key.source().begin));
}

size_t Rewriter::lineStart(size_t offset) const {
  return lines_.lineStart(lines_.placeOf(offset).line);
}

size_t Rewriter::lineEnd(size_t offset) const {
  return lines_.lineEnd(lines_.placeOf(offset).line);
}

size_t Rewriter::afterLine(size_t offset) const {
  return lines_.lineStart(lines_.placeOf(offset).line + 1);
}

bool Rewriter::firstOnLine(size_t offset) const {
  const size_t start = lineStart(offset);
  return text_.find_first_not_of(" \t", start) >= offset;
}

const Statement* Rewriter::statementAt(size_t offset) const {
  const Statement* found = nullptr;
  for (const Statement& statement : statements_) {
    if (statement.begin > offset) break;
    found = &statement;
  }
  return found;
}

// The end of the last statement of the section whose heading stands at `begin`: comments behind it
// belong to what comes next.
size_t Rewriter::endOfSection(size_t begin) const {
  size_t end = begin;
  bool inside = false;
  for (const Statement& statement : statements_) {
    if (statement.begin < begin) continue;
    if (inside && statement.header) break;
    inside = true;
    end = statement.end;
  }
  return end;
}

const toml::node* Rewriter::find(std::string_view path) const {
  const toml::node* node = &root_;
  while (node && !path.empty()) {
    const size_t dot = path.find('.');
    const toml::table* table = node->as_table();
    node = table ? table->get(path.substr(0, dot)) : nullptr;
    path = dot == std::string_view::npos ? std::string_view{} : path.substr(dot + 1);
  }
  return node;
}

}  // namespace model
