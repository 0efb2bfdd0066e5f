/**
 * From an assessment to sheets that lie on the bench. Start at {@link org.brakewright.sheets.Sheets}.
 */
@NullMarked
package org.brakewright.sheets;

import org.jspecify.annotations.NullMarked;
