/** Heat in a brake: material against temperature, cooling, sharing, closed forms, and a wheel's brake as four lumps. */
@NullMarked
package org.brakewright.kernel.thermal;

import org.jspecify.annotations.NullMarked;
