/** Tests of reading, editing and publishing the build file. */
@NullMarked
package org.brakewright.buildfile;

import org.jspecify.annotations.NullMarked;
