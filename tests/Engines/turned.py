"""A joint tightened by a torque and a turn, and what loosens it: M14x1.5 10.9, 45 mm of steel, friction 0.14.

Own arithmetic from ISO 724, ISO 4014 (washer face 19.37 mm), ISO 273 (hole 15.5 mm), VDI 2230 (yield with torsion
plastic), Shigley Table 8-7 and Eq. 8-23. Standard library only.
"""
from math import atan, cos, exp, pi, radians, sqrt, tan

D, P, RP, GRIP, MU, DW, DH, E = 14.0, 1.5, 940.0, 45.0, 0.14, 19.37, 15.5, 207000.0
H = sqrt(3) / 2 * P
D2, D3 = D - 0.75 * H, D - 17 / 12 * H
D0 = (D2 + D3) / 2
AS = pi / 4 * D0**2
PHI, RHO, DB = atan(P / (pi * D2)), atan(MU / cos(radians(30))), (DW + DH) / 2
UP = D2 / 2 * tan(RHO + PHI) + MU * DB / 2
DOWN = D2 / 2 * tan(RHO - PHI) + MU * DB / 2
MOST = AS * RP / sqrt(1 + 3 * (1.5 * D2 / D0 * tan(PHI + RHO)) ** 2)
BOLT = AS * E / GRIP
CLAMPED = E * D * 0.78715 * exp(0.62873 * D / GRIP)
PER_TURN = P / (1 / BOLT + 1 / CLAMPED)

for torque, degrees in ((100, 0), (100, 15), (100, 90)):
    elastic = 1000 * torque / UP + degrees / 360 * PER_TURN
    preload = min(elastic, MOST)
    print(f"{torque} N·m + {degrees}°: F {preload:.2f} N, yields {elastic > MOST}, loosens at {preload * DOWN / 1000:.4f} N·m")
