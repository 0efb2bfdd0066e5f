/** The pedals from three sides, to be taped to floor and firewall. */
@NullMarked
package org.brakewright.sheets.footwell;

import org.jspecify.annotations.NullMarked;
