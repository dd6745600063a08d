#include "sim/base/result.h"

namespace proofstand::base {

std::string Error::sentence() const {
  std::string text;
  if (!where.empty()) text += where + ": ";
  if (warning) text += "note: ";
  text += what;
  if (!code.empty()) text += " (" + code + ")";
  if (!instead.empty()) text += ". " + instead;
  return text;
}

}  // namespace proofstand::base
