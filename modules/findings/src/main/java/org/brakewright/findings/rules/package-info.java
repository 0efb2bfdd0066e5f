/** One class a rule: found, limit, whose limit. */
@NullMarked
package org.brakewright.findings.rules;

import org.jspecify.annotations.NullMarked;
