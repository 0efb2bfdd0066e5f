/** Sheets of what carries the pedal: cut, drill, lay on, saw, and the push that proves it. */
@NullMarked
package org.brakewright.sheets.mount;

import org.jspecify.annotations.NullMarked;
