// Changes the text of one job file where a job differs from what the text says.
#pragma once

#include <toml++/toml.h>

#include <set>
#include <string>

#include "model/job/align.h"
#include "model/job/key_table.h"
#include "model/job/statements.h"
#include "model/job/text_edits.h"
#include "model/job/text_index.h"

namespace model {

class Rewriter {
 public:
  // `text` has no byte order mark and says `before`; both it and `root` must outlive the rewriter.
  Rewriter(const std::string& text, const toml::table& root, const Job& before, const Job& now);

  // The changed text. Its callers check that it says what it should: some ways of writing TOML are
  // rare enough not to be followed here.
  std::string rewritten();

 private:
  // --- tables
  void rewriteTable(const TableSpec& spec, const toml::table* table, size_t before, size_t now);
  void rewriteOptional(const TableSpec& spec);
  void rewriteMany(const TableSpec& spec);
  std::vector<AlignedPair> alignedRows(const TableSpec& spec, size_t inFile);
  void rewriteAbsent(const TableSpec& spec, const toml::node* node);
  void rewriteSections(const TableSpec& spec, const toml::array& list,
                       const std::vector<AlignedPair>& rows);
  void addKeys(const TableSpec& spec, const toml::table* table, const std::string& lines);
  void addSection(const std::string& text) { appended_ += newLine_ + text; }
  void removeSection(size_t begin);
  void insertLinesBehind(size_t offset, const std::string& lines);
  // --- values
  void rewriteValue(const KeySpec& key, const toml::node& node, const Slot& before,
                    const Slot& now);
  void rewriteCorners(const toml::array& list, const Outline& before, const Outline& now);
  void removeKey(const toml::table& table, const toml::key& key, const toml::node& node);
  // --- lists in brackets
  struct ListChange {
    std::vector<AlignedPair> rows;
    std::vector<std::string> newItems;  // by index of the new list
  };
  void changeList(const toml::array& list, const ListChange& change);
  void removeItem(const toml::array& list, size_t index);
  void appendToList(const toml::array& list, const std::string& items);
  // --- places
  size_t beginOf(const toml::node& node) const;
  size_t endOf(const toml::node& node) const;
  size_t beginOf(const toml::key& key) const;
  size_t lineStart(size_t offset) const;
  size_t lineEnd(size_t offset) const;
  size_t afterLine(size_t offset) const;
  bool firstOnLine(size_t offset) const;
  const Statement* statementAt(size_t offset) const;
  size_t endOfSection(size_t begin) const;
  const toml::node* find(std::string_view path) const;

  const std::string& text_;
  const toml::table& root_;
  Job before_, now_;  // copies, because slots are handed out for writing
  Job leftOut_;       // `before_` as it would be read beside the units that `now_` names
  LineIndex lines_;
  std::vector<Statement> statements_;
  std::string newLine_;
  TextEdits edits_;
  std::set<const toml::node*> removed_;  // values of keys that are taken out
  std::string appended_;                 // sections that go to the end
};

}  // namespace model
