/** What carries the foot's force into the body. */
@NullMarked
package org.brakewright.model.mount;

import org.jspecify.annotations.NullMarked;
