// Where the sources and the build lie. Only folders.cpp is told, so that what a test compiles to is
// the same in every clone.
#pragma once

#include <string>

namespace test_support {

// With no slash at the end.
std::string sourceFolder();
std::string buildFolder();

}  // namespace test_support
