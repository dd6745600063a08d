// How the mark sheet's page looks: paper, ink, one accent; no script and nothing from outside the page.
#pragma once

#include <string_view>

namespace proofstand::report {

/// The page's style rules, to be set between style tags.
std::string_view page_style();

}  // namespace proofstand::report
