// The one translation unit that carries the test runner when the installed Catch2 is the single-header edition.
#if !__has_include(<catch2/catch_all.hpp>)
#define CATCH_CONFIG_MAIN
#include <catch2/catch.hpp>
#else
#include <catch2/catch_session.hpp>
int main(int argc, char* argv[]) { return Catch::Session().run(argc, argv); }
#endif
