#include "model/job/read_tables.h"

#include <algorithm>

#include "model/job/key_suggestion.h"
#include "model/job/nearest.h"
#include "model/job/unit_formats.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr size_t kMostProblems = 200;

std::string joined(const std::string& path, std::string_view name) {
  if (name.empty()) return path;
  return path.empty() ? std::string(name) : path + "." + std::string(name);
}

std::string indexed(const std::string& path, size_t index) {
  return path + "[" + std::to_string(index) + "]";
}

class TableReader {
 public:
  TableReader(bool whole, Job& job, ReadContext& context, BrokenParts& broken)
      : whole_(whole), job_(job), context_(context), broken_(broken) {}

  // `spec` is null for the file itself. `path` carries indices ("opening[2]"), `jobPath` is the
  // same as Job spells it.
  void readTable(const toml::table& table, const TableSpec* spec, size_t index,
                 const std::string& path, const std::string& jobPath) {
    const std::string plainPath = spec ? spec->path : "";
    const std::string label = spec ? labelOf(*spec, table, index) : "";
    if (plainPath == "walls") takeFormats(table);
    for (auto&& [key, node] : table) {
      if (context_.problems.size() >= kMostProblems) return;
      const std::string full = joined(plainPath, key.str());
      if (const TableSpec* inner = findTable(full)) {
        readSection(*inner, key, node);
      } else if (const KeySpec* known = findKey(plainPath, key.str())) {
        readKey(*known, key, node, index, path, jobPath, label);
      } else {
        unknown(plainPath, path, key, node, label);
      }
    }
    if (spec && whole_) reportMissing(*spec, table, path, label);
  }

  void noteLost(const LostStatement& lost);
  void resolveStoreys();
  void resolveLost();

 private:
  void breakKeys(const std::string& table, const std::string& item);

  // Before the keys, so that sizes that the file gives stand over those of the names. A wrong name
  // has its message when its key is read.
  void takeFormats(const toml::table& walls) {
    const auto choiceOf = [&](const char* name, auto... sizes) -> std::optional<size_t> {
      if (!walls.contains(name)) return std::nullopt;
      const auto word = walls[name].value<std::string>();
      const std::vector<std::string> choices = choicesOf(*findKey("walls", name));
      const auto found = std::find(choices.begin(), choices.end(), word.value_or(""));
      if (found == choices.end()) {  // what it would set is not known then
        for (const char* size : {sizes...})
          if (!walls.contains(size)) broken_.insert(joined("walls", size));
        return std::nullopt;
      }
      return static_cast<size_t>(found - choices.begin());
    };
    if (const auto bricks =
            choiceOf("bricks", "outer_leaf", "brick_length", "brick_height", "joint"))
      takeBrickSizes(job_.walls, static_cast<BrickFormat>(*bricks));
    if (const auto blocks = choiceOf("blocks", "inner_leaf", "block_length", "block_height"))
      takeBlockSizes(job_.walls, static_cast<BlockFormat>(*blocks));
  }

  void note(const std::string& path, const std::string& jobPath, Place place) {
    context_.places[path] = place;
    context_.places[jobPath] = place;
  }

  void fail(const std::string& path, Place place, std::string what, std::string instead) {
    broken_.insert(path);
    context_.error(place, std::move(what), std::move(instead));
  }

  // `opening "Front door"`, `step 2` or, for a section that is there once, its heading's name.
  static std::string labelOf(const TableSpec& spec, const toml::table& table, size_t index) {
    if (spec.form != TableForm::Many) return spec.path;
    if (spec.labelKey) {
      if (const auto text = table[spec.labelKey].value<std::string>()) {
        if (!text->empty() && text->size() <= 60) {
          return std::string(spec.noun) + " \"" + *text + "\"";
        }
      }
    }
    return std::string(spec.noun) + " " + std::to_string(index + 1);
  }

  static std::string shownKey(const KeySpec& key, const TableSpec& spec, const std::string& label) {
    return spec.form == TableForm::Many ? label + ": " + key.name
                                        : std::string(key.table) + "." + key.name;
  }

  void readKey(const KeySpec& known, const toml::key& key, const toml::node& node, size_t index,
               const std::string& path, const std::string& jobPath, const std::string& label) {
    const std::string keyPath = joined(path, known.name);
    note(keyPath, joined(jobPath, known.name), placeOf(key));
    const Slot slot = known.slot(job_, index);
    const std::string shown = shownKey(known, *findTable(known.table), label);
    if (known.kind == ValueKind::StoreyRef) {
      const auto* name = node.as_string();
      if (name) {
        storeyRefs_.push_back({name->get(), slot, keyPath, placeOf(key), shown});
        return;
      }
    }
    if (!readInto(known, slot, node, placeOf(key), shown, keyPath, context_)) {
      broken_.insert(keyPath);
    }
  }

  void readSection(const TableSpec& spec, const toml::key& key, const toml::node& node) {
    const Place place = placeOf(key);
    const std::string path = spec.path;
    if (spec.form == TableForm::Many) {
      readMany(spec, place, node);
      return;
    }
    note(path, spec.jobPath, place);
    const toml::table* table = node.as_table();
    if (!table) {
      const bool list = node.is_array();
      fail(path, place, path + (list ? " is a list" : " is not a section"),
           list ? "it is there once: write [" + path + "] with single brackets"
                : "write [" + path + "] on a line of its own, its keys below it");
      return;
    }
    spec.resize(job_, 1);
    readTable(*table, &spec, 0, path, spec.jobPath);
  }

  void readMany(const TableSpec& spec, Place place, const toml::node& node) {
    const std::string path = spec.path;
    note(path, spec.jobPath, place);
    const toml::array* list = node.as_array();
    if (!list) {
      fail(path, place, path + " is " + (node.is_table() ? "a single section" : "not a section"),
           "it can be there more than once: write [[" + path + "]] with double brackets");
      return;
    }
    const size_t count = std::min(list->size(), spec.limit);
    if (list->size() > spec.limit) {
      fail(indexed(path, spec.limit), placeOf(*list->get(spec.limit)),
           "there are " + std::to_string(list->size()) + " of " + headingOf(spec),
           std::to_string(spec.limit) + " are the most");
    }
    spec.resize(job_, 0);  // what the file says replaces the default storey
    spec.resize(job_, count);
    for (size_t i = 0; i < count; ++i) {
      const toml::node& item = *list->get(i);
      const std::string itemPath = indexed(path, i);
      note(itemPath, indexed(spec.jobPath, i), placeOf(item));
      if (const toml::table* table = item.as_table()) {
        readTable(*table, &spec, i, itemPath, indexed(spec.jobPath, i));
      } else {
        fail(itemPath, placeOf(item),
             "item " + std::to_string(i + 1) + " of " + path + " is not a section",
             "write its keys in { } or under [[" + path + "]]");
      }
    }
  }

  void unknown(const std::string& plainPath, const std::string& path, const toml::key& key,
               const toml::node& node, const std::string& label) {
    const std::string name(key.str().substr(0, 60));
    const bool section = node.is_table() || node.is_array_of_tables();
    const std::string shown = plainPath.empty() ? name
                              : section         ? plainPath + "." + name
                                                : name + " in " + label;
    noteMisspelt(plainPath, path, name);
    context_.error(placeOf(key),
                   section ? "there is no section " + shown : "there is no key " + shown,
                   keySuggestion(plainPath, name));
  }

  // What the writer most likely meant is then not known, unless it is there as well.
  void noteMisspelt(const std::string& plainPath, const std::string& path,
                    const std::string& name) {
    if (const auto near = nearest(name, keysAndSectionsIn(plainPath))) {
      if (const TableSpec* section = findTable(joined(plainPath, *near))) {
        lostSections_.push_back(section);
      } else {
        misspelt_.push_back(joined(path, *near));
      }
    }
    for (const KeySpec& key : keyTable()) {
      if (name == key.name && findTable(key.table)->form != TableForm::Many) {
        misspelt_.push_back(joined(key.table, key.name));
      }
    }
    for (const TableSpec& table : tableTable()) {
      const std::string_view whole = table.path;
      const size_t dot = whole.rfind('.');
      if (dot != std::string_view::npos && whole.substr(dot + 1) == name) {
        lostSections_.push_back(&table);
      }
    }
  }

  void reportMissing(const TableSpec& spec, const toml::table& table, const std::string& path,
                     const std::string& label) {
    for (const KeySpec& key : keyTable()) {
      if (!key.required || std::string_view(key.table) != spec.path || table.contains(key.name)) {
        continue;
      }
      const std::string keyPath = joined(path, key.name);
      // It is there, but could not be read, or nearly so.
      if (broken_.count(keyPath) || isMisspelt(keyPath)) continue;
      fail(keyPath, context_.places[path], label + " has no " + key.name,
           std::string("add ") + key.name + " = " + key.example);
    }
  }

  bool isMisspelt(const std::string& path) const {
    return std::find(misspelt_.begin(), misspelt_.end(), path) != misspelt_.end();
  }

  struct StoreyRef {
    std::string name;
    Slot slot;
    std::string path;
    Place place;
    std::string shown;
  };

  bool whole_;
  Job& job_;
  ReadContext& context_;
  BrokenParts& broken_;
  std::vector<StoreyRef> storeyRefs_;
  // What the file most likely says, but not so that it can be read.
  std::vector<std::string> misspelt_;  // keys, by path
  std::vector<LostStatement> lostItems_;
  std::vector<const TableSpec*> lostSections_;
};

void TableReader::noteLost(const LostStatement& lost) {
  const std::string name = lost.key.substr(0, 60);
  const TableSpec* inner = findTable(joined(lost.table, name));
  if (inner) {
    lostSections_.push_back(inner);
  } else if (findKey(lost.table, name)) {
    broken_.insert(joined(lost.item, name));
  } else if (!name.empty()) {
    noteMisspelt(lost.table, lost.item, name);
  } else {
    lostItems_.push_back(lost);
  }
}

// The keys directly in a section; those of sections inside it have headings of their own.
void TableReader::breakKeys(const std::string& table, const std::string& item) {
  for (const KeySpec& key : keyTable()) {
    const std::string path = joined(item, key.name);
    if (table == key.table && !context_.places.count(path)) broken_.insert(path);
  }
}

void TableReader::resolveLost() {
  for (const std::string& path : misspelt_) {
    if (!context_.places.count(path)) broken_.insert(path);
  }
  for (const LostStatement& lost : lostItems_) breakKeys(lost.table, lost.item);
  for (const TableSpec* section : lostSections_) {
    if (section->form == TableForm::Many) {
      broken_.insert(indexed(section->path, section->count(job_)));  // there is one more
    } else {
      breakKeys(section->path, section->path);
    }
  }
}

void TableReader::resolveStoreys() {
  const bool allNames = Known(job_, broken_).hasOfEach("storey", job_.storeys.size(), "name");
  std::vector<std::string> names;
  for (const Storey& storey : job_.storeys) names.push_back(storey.name);
  for (const StoreyRef& ref : storeyRefs_) {
    const auto found = std::find(names.begin(), names.end(), ref.name);
    if (found != names.end()) {
      **std::get_if<int*>(&ref.slot) = static_cast<int>(found - names.begin());
      continue;
    }
    if (!allNames) {  // it may be the one that could not be read
      broken_.insert(ref.path);
      continue;
    }
    const auto near = nearest(ref.name, names);
    std::string all;
    for (const std::string& name : names) all += (all.empty() ? "" : ", ") + ("\"" + name + "\"");
    fail(ref.path, ref.place, ref.shown + " is \"" + ref.name.substr(0, 60) + "\"",
         near ? "did you mean \"" + *near + "\"?" : "the storeys are " + all);
  }
}

}  // namespace

void readTables(const ParsedToml& parsed, Job& job, ReadContext& context, BrokenParts& broken) {
  TableReader reader(parsed.whole, job, context, broken);
  for (const LostStatement& lost : parsed.lost) reader.noteLost(lost);
  reader.readTable(parsed.table, nullptr, 0, "", "");
  reader.resolveLost();
  reader.resolveStoreys();
}

}  // namespace model
