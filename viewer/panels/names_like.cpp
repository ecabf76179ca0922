#include "viewer/panels/names_like.h"

#include <algorithm>

#include "model/levelling/level_book.h"
#include "viewer/panels/sheet_pages.h"

namespace viewer {
namespace {

bool begins(const std::string& name, const std::string& text) {
  return text.size() <= name.size() &&
         model::sameName(std::string_view(name).substr(0, text.size()), text);
}

}  // namespace

std::vector<std::string> namesLike(const std::vector<std::string>& names, const std::string& text) {
  std::vector<std::string> like, holding;
  for (const std::string& name : names) {
    if (begins(name, text))
      like.push_back(name);
    else if (matches(name, text))
      holding.push_back(name);
  }
  like.insert(like.end(), holding.begin(), holding.end());
  return like;
}

std::optional<std::string> nameMeant(const std::vector<std::string>& names,
                                     const std::string& text) {
  if (text.empty()) return std::nullopt;
  std::vector<std::string> meant;
  for (const std::string& name : names) {
    if (name == text) return name;
    if (model::sameName(name, text)) meant.insert(meant.begin(), name);
  }
  if (!meant.empty()) return meant.front();
  std::copy_if(names.begin(), names.end(), std::back_inserter(meant),
               [&](const std::string& name) { return begins(name, text); });
  return meant.size() == 1 ? std::optional(meant.front()) : std::nullopt;
}

}  // namespace viewer
