/** Numbers to judgements: found, limit, whose limit, smallest cure. Start at {@link org.brakewright.findings.Assess}. */
@NullMarked
package org.brakewright.findings;

import org.jspecify.annotations.NullMarked;
