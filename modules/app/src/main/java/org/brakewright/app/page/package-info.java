/** The assessment as the page shows it: texts, tables, charts. */
@NullMarked
package org.brakewright.app.page;

import org.jspecify.annotations.NullMarked;
