package org.brakewright.analysis.pedal;
