"""Three-quarter plate: deltoid in three parts, biceps, brachialis, triceps, forearm."""
import quarter_torso
from engrave import Line, between, fibres, mix, pen, ramp, ribbon
from quarter_frame import fore
from quarter_tools import glints, lines, muscle, shade

DELT_BACK = [(182, 204), (174.5, 214), (170.5, 230), (169.2, 249), (170.6, 271), (174.4, 295), (181, 318), (191, 340), (203, 360), (211.5, 374)]
DELT_FRONT = [(270, 196.5), (279, 212), (282.5, 228), (283, 248), (281, 270), (277, 292), (268, 314), (254, 336), (237, 357), (223.5, 373)]
DELT_TOP = [(182, 204), (190, 201.5), (202, 200), (212, 198), (222, 193), (238, 191.6), (256, 193.2), (270, 196.5)]
DELTOID = [(*DELT_TOP[0], "c"), *DELT_TOP[1:-1], (*DELT_TOP[-1], "c"), *DELT_FRONT[1:], (220.5, 381), (217.5, 384), (214, 381), *DELT_BACK[:0:-1]]


def washes(p):
    p.linear("wash.deltoid", "arm", (168, 240), (284, 268), [(0, "muscle-base"), (.27, "muscle-light"), (.6, "muscle-base"), (1, "muscle-shade")])
    p.linear("wash.triceps", "arm", (176, 400), (208, 404), [(0, "muscle-base"), (.4, "muscle-light"), (1, "muscle-base")])
    p.linear("wash.biceps", "arm", (214, 400), (280, 404), [(0, "muscle-base"), (.25, "muscle-light"), (.6, "muscle-base"), (1, "muscle-shade")])
    p.linear("wash.fore.muscle", "forearm", fore(80, 44), fore(80, -40), [(0, "muscle-base"), (.3, "muscle-light"), (.62, "muscle-base"), (1, "muscle-shade")])


def arm(p):
    p.on("muscle", "arm")         # nothing but flesh between the bellies
    p.area([(178, 300, "c"), (182, 350), (184, 400), (188, 450), (193, 500), (206, 518), (240, 506), (262, 480), (272, 430), (270, 380), (270, 340),
            (278, 290, "c"), (230, 300)], "muscle-shade")
    p.on("muscle", "arm", "triceps", "Triceps brachii")
    tri = [(176, 300, "c"), (178, 322), (180, 342), (180, 358), (178.6, 378), (176.8, 398), (177, 418), (179.4, 442), (184, 466), (186.8, 488), (186.6, 506),
           (187, 524), (190, 538), (198, 548), (212, 553, "c"), (216, 530), (206, 516), (204, 494), (205, 470), (205, 440), (207, 410), (209.5, 384), (209, 362), (196, 330)]
    muscle(p, tri, "wash.triceps", 1.3)
    lines(p, [[(180, 316), (194, 330)], [(182, 356), (206, 362)], [(179, 398), (207, 402)], [(184, 456), (204, 460)], [(190, 510), (202, 506)]], 8, .55, .75, lift=.15)
    glints(p, [[(184, 350), (192, 350)], [(182, 396), (191, 396)], [(187, 446), (194, 446)]], 2, 1.1)
    p.ink(pen([(190, 440), (192, 476), (194, 508), (198, 530), (208, 550)], [.05, 4, 9, 11, 8]), "tendon", .8)
    p.ink(pen([(184, 460), (187, 496), (190.6, 522), (199, 541), (208, 549)], [.05, 2, 3.4, 5, 6]), "tendon", .7)
    p.ink(fibres([[(187, 470), (193, 468)], [(189, 510), (199, 506)], [(199, 545), (209, 540)]], 5, .4, lift=.15), "tendon-line", .85)
    p.on("muscle", "arm", "brachialis", "Brachialis")
    bra = [(213, 362, "c"), (226, 362), (232, 390), (236, 430), (244, 466), (256, 488), (250, 504, "c"), (232, 498), (218, 484), (209, 464), (206, 440), (206.5, 412), (209, 386)]
    muscle(p, bra, "muscle-base", 1.2)
    lines(p, [[(213, 380), (222, 380)], [(208, 410), (222, 410)], [(209, 444), (228, 448)], [(220, 476), (244, 480)], [(236, 492), (250, 494)]], 7, .5, .75, lift=.18)
    p.on("muscle", "arm", "biceps", "Biceps brachii")
    bic = [(240, 330, "c"), (260, 306), (279, 288), (275, 320), (270.4, 341), (269.8, 357), (272.2, 377), (275.8, 398), (277, 418), (275.4, 438), (271.6, 456), (266.4, 472),
           (262, 484), (257, 496), (251, 506, "c"), (247, 496), (242, 478), (232, 453), (223.5, 426), (220, 400), (222, 374), (231, 351)]
    muscle(p, bic, "wash.biceps", 1.9)
    lines(p, [[(244, 332), (264, 316)], [(226, 366), (248, 362)], [(221.5, 400), (247, 400)], [(228, 438), (250, 438)], [(246, 482), (252, 484)]], 7, .6, .75, lift=.12)
    lines(p, [[(266, 310), (276, 300)], [(250, 362), (269, 360)], [(250, 400), (275, 400)], [(253, 438), (274, 438)], [(254, 480), (262, 478)]], 6, .6, .78, lift=.12)
    seam = Line([(262, 320), (251, 352), (248.5, 392), (251.5, 432), (254, 468)])
    p.ink(pen(seam, [.3, 1.1, 1.0, .9, .1]), "muscle-line", .85)
    shade(p, seam.shifted(-7), seam, "muscle-shade", .16, 3)
    glints(p, [[(228, 362), (236, 360)], [(225, 400), (234, 400)], [(231, 436), (239, 436)]], 3, 1.2)
    rim0, rim1 = Line([(262, 350), (262, 390), (262, 430), (258, 462)]), Line([(270, 346), (274, 390), (275, 430), (268, 466)])
    shade(p, rim0, rim1, "muscle-shade", .18, 3)
    p.ink([pen([(252, 446), (255, 470), (254, 488), (250, 506)], [.05, 2.4, 6, 5]), pen([(262, 452), (261, 474), (256, 492), (250, 506)], [.05, 2.2, 4.4, 4])], "tendon", .75)
    deltoid(p)


def deltoid(p):
    p.on("muscle", "arm", "deltoid", "Deltoid")
    muscle(p, DELTOID, "wash.deltoid", 2.0)
    back, front = Line(DELT_BACK), Line(DELT_FRONT)
    s1 = Line([(184, 203), (180, 226), (180, 254), (186, 290), (198, 330), (213, 372)])      # posterior | middle
    s2 = Line([(213, 198), (224, 222), (230, 250), (230, 288), (226, 330), (219, 374)])      # middle | anterior
    shade(p, s1.shifted(8), s1, "muscle-shade", .15, 3, lambda s: ramp(s, (0, .3), (.4, 1), (1, .2)))
    shade(p, s2.shifted(-11), s2, "muscle-shade", .15, 3, lambda s: ramp(s, (0, .3), (.4, 1), (1, .2)))
    cut = lambda a, b, t: [a(t), b(t)]
    gp = [cut(back, s1, t) for t in (.05, .2, .42, .65, .85)] + [[(211, 370), (213, 373)]]
    lines(p, gp, 4, .6, .8, lift=.16)
    ga = [[(216, 197.5), (228, 194.5), (244, 194.5), (258, 197), (270, 200)]] + [cut(s2, front, t) for t in (.2, .42, .65, .85)] + [[(220, 376), (223, 373)]]
    lines(p, ga, 13, .66, .82, lift=.12)
    glints(p, [cut(s2, front, t) for t in (.12, .35, .6)], 4, 1.2, .45)
    mid = [between(s1, s2, v) for v in (0, .2, .4, .6, .8, 1)]
    for i in (1, 3):
        p.ink(pen(mid[i].part(.0, .62), [1.7, 1.4, .9, .05]), "tendon", .8)
    for i in (2, 4):
        p.ink(pen(mid[i].part(.34, 1), [.05, .9, 1.4, 1.8]), "tendon", .8)
    for i in range(5):      # feathered fibres between the slips
        down, up = (mid[i], mid[i + 1]) if i % 2 else (mid[i + 1], mid[i])
        n = 5
        for k in range(n):
            u = .03 + .56 * (k + .5 * (i % 3) / 3) / n
            a, b = down(u), up(min(.97, u + .25))
            m = mix(a, b, .5)
            p.ink(pen([a, (m[0], m[1] + 1.5), b], [.1, .6 + .03 * i, .1]), "muscle-line", .75)
    p.ink(pen(s1, [.1, .9, 1.0, .8, .4]), "muscle-line", .8)
    p.ink(pen(s2, [.1, 1.0, 1.2, 1.0, .5]), "muscle-line", .85)
    for x, y in ((211, 352), (215, 340), (219, 334), (223, 342), (227, 350)):
        p.ink(pen([(x, y), (217.5 + .55 * (x - 218), 366), (217.5 + .2 * (x - 218), 382)], [.05, 2.2, 2.6, 1.6]), "tendon", .7)
    p.ink(fibres([[(211, 360), (225, 360)], [(215.5, 381), (219.5, 381)]], 6, .45, lift=.2), "tendon-line", .85)
    rim0, rim1 = Line([(262, 214), (262, 250), (252, 296), (234, 344)]), Line([(280, 216), (282, 252), (274, 298), (244, 350)])
    shade(p, rim0, rim1, "muscle-shade", .2, 4)


def forearm(p):
    p.on("muscle", "forearm", "extensors", "Forearm extensors")
    env = [(205, 508, "c"), (222, 500), fore(10, 26), fore(54, 34), fore(108, 33), fore(176, 26), fore(232, 22), fore(238, 0), fore(232, -27), fore(190, -28),
           fore(150, -31), fore(110, -35.5), fore(75, -39.5), fore(45, -40), fore(22, -37.5), fore(4, -33.5), fore(-8, -28.5), fore(-16, -21), (201, 530), (200, 517)]
    p.area(env, "wash.fore.muscle")
    low = Line([fore(-16, -21), fore(-8, -28.5), fore(4, -33.5), fore(22, -37.5), fore(45, -40), fore(75, -39.5), fore(110, -35.5), fore(150, -31), fore(190, -28), fore(232, -27)])
    p.ink(pen(low, [.4, 1.6, 1.9, 2.0, 1.8, 1.6, 1.5, .4]), "muscle-line")
    shade(p, low.shifted(-18), low, "muscle-shade", .2, 4, lambda s: ramp(s, (0, .2), (.2, 1), (1, .9)))
    for a in ([(206, 514), fore(26, 6), fore(70, 12), fore(124, 15), fore(186, 13)], [(204, 517), fore(20, -6), fore(70, -5), fore(132, -4), fore(196, -6)],
              [(202, 520), fore(18, -14), fore(70, -17), fore(132, -16), fore(196, -17)]):
        p.ink(pen(a, [.1, 1.0, .9, .7, .1]), "muscle-line", .9)
    lines(p, [[(208, 513), (205, 516)], [fore(35, 4), fore(35, -5)], [fore(88, 11), fore(88, -3)], [fore(168, 11), fore(168, -3)]], 5, .5, .7)
    lines(p, [[(204, 518), (203, 520)], [fore(35, -9), fore(35, -14)], [fore(88, -7), fore(88, -15)], [fore(168, -7), fore(168, -15)]], 4, .5, .7)
    lines(p, [[fore(4, -24), fore(12, -34)], [fore(45, -20), fore(45, -37)], [fore(98, -19), fore(98, -33)], [fore(168, -18), fore(168, -26)]], 6, .5, .7)
    p.on("muscle", "forearm", "brachioradialis", "Brachioradialis")
    br = [(209, 446, "c"), (216, 462), (226, 480), (240, 496), fore(24, 37), fore(38, 42.5), fore(56, 45), fore(80, 42.5), fore(110, 37.5), fore(140, 32), fore(172, 27),
          fore(205, 25), fore(232, 25), fore(232, 20), fore(190, 17), fore(146, 17), fore(106, 17), fore(66, 14), fore(31, 9), (212, 510), (207, 486)]
    muscle(p, br, "wash.fore.muscle", 1.4)
    p.ink(pen([(209, 476), (218, 500), fore(26, 20), fore(60, 27), fore(100, 26), fore(142, 23)], [.1, .9, 1.1, .9, .6, .05]), "muscle-line", .9)
    lines(p, [[(211, 456), (218, 468)], [(220, 486), (234, 492)], [fore(30, 26), fore(30, 38)], [fore(70, 29), fore(70, 40)], [fore(132, 24), fore(132, 31)]], 7, .55, .75, lift=.15)
    lines(p, [[(208, 484), (211, 496)], [fore(14, 11), fore(20, 20)], [fore(62, 16), fore(62, 26)], [fore(132, 18), fore(132, 22)]], 5, .5, .75, lift=.15)
    glints(p, [[fore(20, 28), fore(20, 35)], [fore(56, 31), fore(56, 38)], [fore(98, 28), fore(98, 34)]], 3, 1.0)
    p.area(ribbon([fore(124, 27), fore(158, 23.5), fore(190, 21), fore(230, 21)], [.5, 3.4, 4.6, 4.6]), "tendon", .9)


def draw(p):
    washes(p)
    quarter_torso.draw(p)
    arm(p)
    forearm(p)
