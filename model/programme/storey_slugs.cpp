#include <algorithm>
#include <set>
#include <string_view>

#include "model/programme/stage_words.h"

namespace model {

std::vector<std::string> storeySlugs(const std::vector<Storey>& storeys) {
  std::vector<std::string> slugs;
  std::set<std::string> taken;
  for (size_t i = 0; i < storeys.size(); ++i) {
    std::string slug;
    const std::string& name = storeys[i].name;
    // Letters that an id cannot carry would leave a torn word: such a storey goes by its number.
    const bool plainName = std::all_of(name.begin(), name.end(),
                                       [](char c) { return static_cast<unsigned char>(c) < 0x80; });
    for (char c : plainName ? name : std::string()) {
      if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
      const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
      if (plain)
        slug += c;
      else if (!slug.empty() && slug.back() != '-')
        slug += '-';
    }
    while (!slug.empty() && slug.back() == '-') slug.pop_back();
    constexpr std::string_view kFloor = "-floor";
    if (slug.size() > kFloor.size() && slug.ends_with(kFloor)) {
      slug.resize(slug.size() - kFloor.size());
    }
    if (slug.empty()) slug = "storey-" + std::to_string(i + 1);
    std::string unique = slug;
    for (int n = 2; !taken.insert(unique).second; ++n) unique = slug + "-" + std::to_string(n);
    slugs.push_back(unique);
  }
  return slugs;
}

}  // namespace model
