#include "sim/base/result.h"

namespace proofstand::base {

std::string Error::sentence() const {
  std::string text;
  if (!where.empty()) text += where + ": ";
  if (warning) text += "note: ";
  text += what;
  if (!instead.empty()) text += "; " + instead;
  if (!code.empty()) text += " [" + code + "]";
  return text;
}

}  // namespace proofstand::base
