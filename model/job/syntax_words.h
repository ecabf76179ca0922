// What is wrong with a statement that the TOML library refuses, in words for people.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "model/job/statements.h"

namespace model {

struct SyntaxFault {
  size_t at = 0;  // byte where the fault is best shown
  std::string what;
  std::string instead;
};

// `index` is the faulty one of `all`; `at` and `reason` are where and why the library stopped.
SyntaxFault explainSyntax(std::string_view text, const std::vector<Statement>& all, size_t index,
                          size_t at, std::string_view reason);

}  // namespace model
