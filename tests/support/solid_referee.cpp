#include "tests/support/solid_referee.h"
