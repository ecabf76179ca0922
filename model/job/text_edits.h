// Changes to a text, collected first and made together, so that offsets stay those of the original.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace model {

class TextEdits {
 public:
  void replace(size_t begin, size_t end, std::string with);
  void insert(size_t at, std::string what) { replace(at, at, std::move(what)); }
  void remove(size_t begin, size_t end) { replace(begin, end, {}); }
  bool empty() const { return edits_.empty(); }

  // Edits at one place come out in the order they were asked for. Ranges must not overlap; one
  // that does is dropped.
  std::string apply(std::string_view text) const;

 private:
  struct Edit {
    size_t begin, end;
    std::string with;
  };
  std::vector<Edit> edits_;
};

}  // namespace model
