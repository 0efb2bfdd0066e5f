/** What is printed of the lines: a bend sheet for each tube, what is cut of which length, what is joined and bled. */
@NullMarked
package org.brakewright.sheets.lines;

import org.jspecify.annotations.NullMarked;
