/** Reports as text and JSON. */
@NullMarked
package org.brakewright.app.report;

import org.jspecify.annotations.NullMarked;
