// Catch2 as the tests see it: edition 2 (Debian 12, one header) and edition 3 (Debian 13, a library) alike.
#pragma once
#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
using Catch::Approx;
#else
#include <catch2/catch.hpp>
#endif
