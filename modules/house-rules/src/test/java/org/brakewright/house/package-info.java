/** The habits of the house, each held by a test. */
@NullMarked
package org.brakewright.house;

import org.jspecify.annotations.NullMarked;
