/** Tests of the quantity room; numbers come from NIST SP 811 and from the definitions of the units. */
@NullMarked
package org.brakewright.quantity;

import org.jspecify.annotations.NullMarked;
