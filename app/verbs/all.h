// Every headless verb, each in a file of its own. verb.cpp puts them into the table.
#pragma once

#include "app/verbs/verb.h"

namespace blinkwright::app::verbs {

const Verb& readingsVerb();
const Verb& checkVerb();
const Verb& spreadVerb();
const Verb& chooseVerb();
const Verb& whyVerb();
const Verb& trendVerb();
const Verb& fitVerb();
const Verb& exportVerb();

} // namespace blinkwright::app::verbs
