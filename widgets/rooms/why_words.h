// What each cause of a difference is called and what it does, in words for people.
#pragma once

#include "core/study/idealised.h"

#include <QString>

namespace blinkwright::widgets {

QString causeName(study::Imperfection imperfection);
QString causeMeaning(study::Imperfection imperfection);

} // namespace blinkwright::widgets
