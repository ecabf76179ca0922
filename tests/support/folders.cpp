#include "tests/support/folders.h"

namespace test_support {

std::string sourceFolder() { return SOURCE_DIR; }
std::string buildFolder() { return BINARY_DIR; }

}  // namespace test_support
