#include "model/job/rewriter.h"

#include <algorithm>

#include "model/job/section_text.h"
#include "model/job/unit_formats.h"
#include "model/job/value_text.h"

namespace model {

namespace {

// Tables and lists that have headings of their own are not values of the table they are in.
bool isValue(const toml::node& node) {
  if (const toml::table* table = node.as_table()) return table->is_inline();
  if (const toml::array* list = node.as_array(); list && !list->empty()) {
    const toml::table* first = list->get(0)->as_table();
    return !first || first->is_inline();
  }
  return true;
}

}  // namespace

Rewriter::Rewriter(const std::string& text, const toml::table& root, const Job& before,
                   const Job& now)
    : text_(text),
      root_(root),
      before_(before),
      now_(now),
      lines_(text),
      statements_(splitStatements(text)),
      newLine_(text.find("\r\n") != std::string::npos ? "\r\n" : "\n") {
  leftOut_ = before_;
  if (before_.walls.bricks != now_.walls.bricks) takeBrickSizes(leftOut_.walls, now_.walls.bricks);
  if (before_.walls.blocks != now_.walls.blocks) takeBlockSizes(leftOut_.walls, now_.walls.blocks);
  leftOut_.walls.bricks = before_.walls.bricks;
  leftOut_.walls.blocks = before_.walls.blocks;
}

std::string Rewriter::rewritten() {
  for (const TableSpec& spec : tableTable()) {
    switch (spec.form) {
      case TableForm::Always: {
        const toml::node* node = find(spec.path);
        rewriteTable(spec, node ? node->as_table() : nullptr, 0, 0);
        break;
      }
      case TableForm::Optional:
        rewriteOptional(spec);
        break;
      case TableForm::Many:
        rewriteMany(spec);
        break;
    }
  }
  std::string result = edits_.apply(text_);
  if (!appended_.empty() && !result.empty() && result.back() != '\n') result += newLine_;
  return result + appended_;
}

void Rewriter::rewriteTable(const TableSpec& spec, const toml::table* table, size_t before,
                            size_t now) {
  std::string added;
  for (const KeySpec& key : keyTable()) {
    if (std::string_view(key.table) != spec.path) continue;
    const toml::node* node = table ? table->get(key.name) : nullptr;
    const Slot old = key.slot(node ? before_ : leftOut_, before), fresh = key.slot(now_, now);
    const std::string text = valueText(key, fresh, now_);
    if (text == valueText(key, old, before_)) continue;
    if (!node) {
      // An absent storey is the first one, whatever that is called.
      const bool first = key.kind == ValueKind::StoreyRef && **std::get_if<int*>(&fresh) == 0;
      if (!text.empty() && !first)
        added += (added.empty() ? "" : "\n") + (key.name + (" = " + text));
    } else if (text.empty()) {
      removeKey(*table, table->find(key.name)->first, *node);
    } else {
      rewriteValue(key, *node, old, fresh);
    }
  }
  if (!added.empty()) addKeys(spec, table, added);
}

void Rewriter::rewriteValue(const KeySpec& key, const toml::node& node, const Slot& before,
                            const Slot& now) {
  const toml::array* list = node.as_array();
  if (key.kind == ValueKind::Corners && list && !list->empty()) {
    rewriteCorners(*list, **std::get_if<Outline*>(&before), **std::get_if<Outline*>(&now));
  } else {
    edits_.replace(beginOf(node), endOf(node), valueText(key, now, now_));
  }
}

void Rewriter::removeKey(const toml::table& table, const toml::key& key, const toml::node& node) {
  removed_.insert(&node);
  const size_t begin = beginOf(key), end = endOf(node);
  if (!table.is_inline()) {
    edits_.remove(lineStart(begin), afterLine(end));
    return;
  }
  const size_t next = text_.find_first_not_of(" \t", end);
  if (next != std::string::npos && text_[next] == ',') {
    edits_.remove(begin, text_.find_first_not_of(" \t", next + 1));
    return;
  }
  const size_t previous = text_.find_last_not_of(" \t", begin - 1);
  edits_.remove(previous != std::string::npos && text_[previous] == ',' ? previous : begin, end);
}

// `lines` are keys with values, separated by line feeds.
void Rewriter::addKeys(const TableSpec& spec, const toml::table* table, const std::string& lines) {
  const auto joined = [&](const std::string& separator) {
    std::string text;
    for (const char c : lines) text += c == '\n' ? separator : std::string(1, c);
    return text;
  };
  if (!table) {
    addSection("[" + std::string(spec.path) + "]" + newLine_ + joined(newLine_) + newLine_);
    return;
  }
  const toml::node* last = nullptr;
  size_t lastKey = 0;
  for (auto&& [key, node] : *table) {
    if (!isValue(node) || removed_.count(&node) || (last && beginOf(key) < lastKey)) continue;
    last = &node;
    lastKey = beginOf(key);
  }
  if (table->is_inline()) {
    if (last) {
      edits_.insert(endOf(*last), ", " + joined(", "));
    } else {
      edits_.insert(beginOf(*table) + 1, " " + joined(", ") + " ");
    }
  } else if (last) {
    // With the same indent, and the same dotted beginning when there is one.
    const std::string prefix = text_.substr(lineStart(lastKey), lastKey - lineStart(lastKey));
    insertLinesBehind(endOf(*last), prefix + joined(newLine_ + prefix) + newLine_);
  } else {
    const size_t begin = beginOf(*table);
    const Statement* heading = statementAt(begin);
    if (heading && heading->header && heading->key == spec.path) {
      insertLinesBehind(begin, joined(newLine_) + newLine_);
    } else {
      addKeys(spec, nullptr, lines);
    }
  }
}

// Puts whole lines behind the one that holds `offset`.
void Rewriter::insertLinesBehind(size_t offset, const std::string& lines) {
  const size_t at = afterLine(offset);
  const bool lineIsOpen = at == text_.size() && !text_.empty() && text_.back() != '\n';
  edits_.insert(at, (lineIsOpen ? newLine_ : std::string{}) + lines);
}

// Takes out a section with its keys and the empty line behind it.
void Rewriter::removeSection(size_t begin) {
  size_t end = afterLine(endOfSection(begin));
  if (end < text_.size() && lineEnd(end) == end) end = afterLine(end);
  edits_.remove(lineStart(begin), end);
}

void Rewriter::rewriteOptional(const TableSpec& spec) {
  const bool was = spec.count(before_) > 0, is = spec.count(now_) > 0;
  const toml::node* node = find(spec.path);
  const toml::table* table = node ? node->as_table() : nullptr;
  if (!was && is) {
    addSection(sectionText(spec, now_, 0, newLine_));
  } else if (was && is) {
    rewriteTable(spec, table, 0, 0);
  } else if (was && table && table->is_inline()) {
    const std::string path = spec.path;
    const size_t dot = path.rfind('.');
    const toml::node* parent = find(dot == std::string::npos ? "" : path.substr(0, dot));
    const std::string name = dot == std::string::npos ? path : path.substr(dot + 1);
    removeKey(*parent->as_table(), parent->as_table()->find(name)->first, *node);
  } else if (was && table) {
    removeSection(beginOf(*table));
  }
}

void Rewriter::rewriteMany(const TableSpec& spec) {
  const toml::node* node = find(spec.path);
  const toml::array* list = node ? node->as_array() : nullptr;
  if (!list || list->empty()) {
    rewriteAbsent(spec, node);
    return;
  }
  const std::vector<AlignedPair> rows = alignedRows(spec, list->size());
  for (const AlignedPair& row : rows) {
    if (!row.before || !row.now) continue;
    rewriteTable(spec, list->get(*row.before)->as_table(), *row.before, *row.now);
  }
  if (!isValue(*list)) {
    rewriteSections(spec, *list, rows);
    return;
  }
  ListChange change{rows, {}};
  for (size_t j = 0; j < spec.count(now_); ++j) {
    change.newItems.push_back("{ " + keysText(spec, now_, j, ", ") + " }");
  }
  changeList(*list, change);
}

// The file has none of them. What holds then (the default storey) need not be written.
void Rewriter::rewriteAbsent(const TableSpec& spec, const toml::node* node) {
  const size_t count = spec.count(now_);
  bool same = count == spec.count(before_);
  for (size_t i = 0; same && i < count; ++i) same = spec.equal(before_, i, now_, i);
  if (same) return;
  for (size_t i = 0; i < count; ++i) addSection(sectionText(spec, now_, i, newLine_));
  if (node) edits_.remove(lineStart(beginOf(*node)), afterLine(endOf(*node)));
}

// A row stays itself when it has the same name, or is the same in everything.
std::vector<AlignedPair> Rewriter::alignedRows(const TableSpec& spec, size_t inFile) {
  const KeySpec* label = spec.labelKey ? findKey(spec.path, spec.labelKey) : nullptr;
  const auto labelOf = [&](Job& job, size_t i) {
    return label ? valueText(*label, label->slot(job, i), job) : std::string{};
  };
  return align(inFile, spec.count(now_), [&](size_t i, size_t j) {
    const std::string name = labelOf(before_, i);
    if (name.size() > 2 && name == labelOf(now_, j)) return true;
    return spec.equal(before_, i, now_, j);
  });
}

// New sections go behind the one before them, or before the first.
void Rewriter::rewriteSections(const TableSpec& spec, const toml::array& list,
                               const std::vector<AlignedPair>& rows) {
  std::optional<size_t> behind;
  for (const AlignedPair& row : rows) {
    if (row.before) {
      const size_t begin = beginOf(*list.get(*row.before));
      behind = endOfSection(begin);
      if (!row.now) removeSection(begin);
      continue;
    }
    const std::string section = sectionText(spec, now_, *row.now, newLine_);
    if (behind) {
      insertLinesBehind(*behind, newLine_ + section);
    } else {
      edits_.insert(lineStart(beginOf(*list.get(0))), section + newLine_);
    }
  }
}

}  // namespace model
