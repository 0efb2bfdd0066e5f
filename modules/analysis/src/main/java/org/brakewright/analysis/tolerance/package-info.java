/** Cars built like this one: every ± and every assumed range at once, what becomes of the results, and what owns their spread. */
@NullMarked
package org.brakewright.analysis.tolerance;

import org.jspecify.annotations.NullMarked;
