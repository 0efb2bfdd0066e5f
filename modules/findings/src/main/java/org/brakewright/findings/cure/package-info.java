/** The smallest single change that cures a finding, found by computing it. */
@NullMarked
package org.brakewright.findings.cure;

import org.jspecify.annotations.NullMarked;
