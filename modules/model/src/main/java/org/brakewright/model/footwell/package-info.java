/** The pedals as the foot finds them, as a builder writes them down. */
@NullMarked
package org.brakewright.model.footwell;

import org.jspecify.annotations.NullMarked;
