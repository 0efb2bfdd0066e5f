/** What the builder's own shop folds and joins. */
@NullMarked
package org.brakewright.model.shop;

import org.jspecify.annotations.NullMarked;
