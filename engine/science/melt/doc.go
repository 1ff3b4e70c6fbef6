// Package melt models the setting and melting of a food's ice, milk fat
// and cocoa butter. It gives specific heats and conductivities by
// temperature for heat.Volumes.
//
// Packages makeup and history call it. It reads no ingredient table and
// solves no course. SI units, temperatures in C.
//
//   - OnsetC, Ice: freezing and thawing
//   - SolidFat, MilkFatCurve: milk fat
//   - Chocolate, ChocolateHeats: dark chocolate
package melt
