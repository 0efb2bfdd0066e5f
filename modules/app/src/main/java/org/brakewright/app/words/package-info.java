/** Words and units for people: the one place where typed values become sentences. */
@NullMarked
package org.brakewright.app.words;

import org.jspecify.annotations.NullMarked;
