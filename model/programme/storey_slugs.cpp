#include <algorithm>
#include <set>
#include <string_view>

#include "model/job/slug.h"
#include "model/programme/stage_words.h"

namespace model {

std::vector<std::string> storeySlugs(const std::vector<Storey>& storeys) {
  std::vector<std::string> slugs;
  std::set<std::string> taken;
  for (size_t i = 0; i < storeys.size(); ++i) {
    const std::string& name = storeys[i].name;
    // Letters that an id cannot carry would leave a torn word: such a storey goes by its number.
    const bool plainName = std::all_of(name.begin(), name.end(),
                                       [](char c) { return static_cast<unsigned char>(c) < 0x80; });
    std::string slug = plainName ? slugOf(name) : "";
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
